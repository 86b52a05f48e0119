import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Topic } from '../../../src/arithmetic/topics/topic.js';
import { POWER_WORDS } from '../../../src/messages/english/power.js';
import { say } from '../../../src/messages/say.js';
import { POWER_TOPICS, reckoned, wordsOf } from './power-topics.js';

const SOURCE = new URL('../../../src/', import.meta.url);
const code = ['values/units', 'arithmetic/power', 'arithmetic/topics']
  .flatMap((room) => readdirSync(new URL(room, SOURCE)).map((name) => new URL(`${room}/${name}`, SOURCE)))
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');

/** What people type, each right for some input. */
const TYPED: readonly string[] = [
  ...['?', '12 V', '48 V', '24 V', '10-15 V', '30 m', '60-400 m', '1500 m', '0.5 A', '200 mA', '6 W'],
  ...['5-30 W', '60 W', '24 AWG', '0.75 mm2', '20-28 AWG', '3', '4', '8', 'passive', 'standard', 'copper'],
  ...['copper-clad-aluminium', '-10 to 40 C', '1 class 3 6 W; 2 class 4 high; 3', 'class 3'],
  ...['10 m 6 W; 20 m 0.4 A', '500 m 1 A', 'class', 'drawn', 'priority', 'refuses-newest', 'star', 'along'],
];

const mustHave = (topic: Topic): readonly string[] =>
  topic.inputs.filter(({ optional }) => optional !== true).map(({ id }) => id);

/** Which of those an input takes, the others being left open. */
function taken(topic: Topic, id: string): readonly string[] {
  const open = Object.fromEntries(mustHave(topic).map((input) => [input, '?']));
  return TYPED.filter((text) => topic.reckon({ ...open, [id]: text }).ok);
}

describe('the words of the sums about power', () => {
  test.each(Object.keys(POWER_WORDS))('%s is said somewhere', (id) => {
    expect(code).toContain(`'${id}'`);
  });

  test.each(POWER_TOPICS.map((topic) => [topic.id, topic] as const))(
    'of %s have every blank filled, whatever is known',
    (_, topic) => {
      const inputs = topic.inputs.map(({ id }) => [id, fc.constantFrom(...taken(topic, id))] as const);
      const given = fc.record(Object.fromEntries(inputs), { requiredKeys: [...mustHave(topic)] });
      fc.assert(
        fc.property(given, (known) => {
          const words = wordsOf(reckoned(topic, known as Record<string, string>));
          expect(words).not.toMatch(/undefined|NaN|Infinity|\{|\[object/);
          expect(words).toContain('Local code');
        }),
        { numRuns: 1_000 },
      );
    },
  );

  test.each(POWER_TOPICS.map((topic) => [topic.id, topic] as const))(
    'of %s ask for every input',
    (_, topic) => {
      for (const { ask, choices = [] } of topic.inputs) {
        expect(say(ask)).toMatch(/\?/);
        for (const { title } of choices) expect(say(title)).not.toBe('');
      }
      expect(say(topic.title)).not.toBe('');
    },
  );
});
