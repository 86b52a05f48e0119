import { stripVTControlCharacters } from 'node:util';
import { describe, expect, it } from 'vitest';
import { openCall } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import { screenOf } from '../../src/call/screen.js';
import { paintFor } from '../../src/cli/paint.js';
import { rankingText } from '../../src/cli/ranking-text.js';
import { pathText, screenText } from '../../src/cli/show-screen.js';
import { verdictLines } from '../../src/cli/verdict-lines.js';
import { agreed, played, said } from '../call/play.js';
import { builtRules } from './built.js';
import { PLAIN, widest } from './prompts/rendered.js';

const COLOUR = paintFor({ isTTY: true }, { TERM: 'xterm' });
const HERE = said('at-site', 'here');
const STEPS: readonly (readonly [string, readonly CallEvent[]])[] = [
  ['a question', []],
  ['a remedy', [HERE, said('lights', 'off')]],
  [
    'a remedy with a caution',
    [
      ...[HERE, said('lights', 'on'), said('account', true), agreed('lights'), agreed('account')],
      said('owner-agrees', true),
    ],
  ],
  ['two answers that do not go together', [HERE, said('lights', 'off'), said('other-phone', true)]],
];

describe('a step on the terminal', () => {
  it.each(STEPS)('says the same without colour: %s', async (_, events) => {
    const screen = screenOf(await played(events));
    expect(stripVTControlCharacters(screenText(screen, COLOUR, 80))).toBe(screenText(screen, PLAIN, 80));
    expect(screenText(screen, COLOUR, 80)).not.toBe(screenText(screen, PLAIN, 80));
  });

  it.each(STEPS)('fits 80 columns and 50: %s', async (_, events) => {
    const screen = screenOf(await played(events));
    expect(widest(screenText(screen, PLAIN, 80))).toBeLessThanOrEqual(80);
    expect(widest(screenText(screen, PLAIN, 50))).toBeLessThanOrEqual(50);
  });

  it('shows cautions before the words to say', async () => {
    const text = screenText(screenOf(await played(STEPS[2]?.[1] ?? [])), PLAIN, 80);
    expect(text.indexOf('Caution')).toBeGreaterThan(0);
    expect(text.indexOf('Say')).toBeGreaterThan(text.indexOf('Caution'));
    expect(text).toMatch(/^Caution {2}Leave mains to an electrician\.$/m);
  });

  it('shows the picture path by sign and word, once something was looked at', async () => {
    expect(screenText(screenOf(await played([])), PLAIN, 80)).toContain('? Power');
    const { path } = screenOf(await played([HERE, said('lights', 'on'), said('account', false)]));
    expect(pathText(path, 80)).toBe('+ Power  ? Sign-in');
  });

  it('lets no text of a caller steer the terminal', async () => {
    const evil: CallEvent = {
      ...HERE,
      type: 'answered',
      question: 'their-words',
      answer: 'x\u001b[2J',
      origin: 'said',
    };
    const call = await played([evil]);
    const screen = { ...screenOf(call), say: ['x\u001b[2J\u202e'] };
    expect(screenText(screen, PLAIN, 80)).toContain('x?[2J?');
  });
});

describe('the ranking and the verdict', () => {
  it('fit 80 columns, and say what a weight is', async () => {
    const call = await played([HERE, said('lights', 'off'), said('socket', 'dead')]);
    const text = rankingText(call, PLAIN, 80);
    expect(widest(text)).toBeLessThanOrEqual(80);
    expect(text).toMatch(/96\s% {2}Title of supply-off/);
    expect(text).toMatch(/\+\d+\.\d db {2}Title of life: seen dark/);
    expect(text).toContain('10 db make the odds ten times higher');
  });

  it('begin with the verdict, then how sure it is, then what to do', async () => {
    const text = verdictLines(
      await played([HERE, said('lights', 'off'), said('socket', 'dead'), said('loose', false)]),
    );
    const [verdict, sure] = text.split('\n');
    expect(verdict).toBe('Verdict of supply-off.');
    expect(sure).toMatch(/^almost certain, 96\s%$/);
    expect(text).toContain('Next: Try this: Title of plug-in');
  });
});

describe('the questions of the real rule base', () => {
  it('fit 80 columns, one after the other', async () => {
    const { rules, digest } = builtRules();
    const header = {
      record: 1,
      id: 'quay-1',
      opened: HERE.at,
      whydark: '0.1.0',
      rules: { version: rules.manifest.version, digest },
      role: 'desk',
    } as const;
    const call = await openCall(rules, digest, header);
    for (const { id } of rules.questions) {
      const asked = {
        ...call,
        step: { kind: 'ask', question: id, group: [id], purpose: { kind: 'opening' } },
      } as const;
      expect(widest(screenText(screenOf(asked), PLAIN, 80))).toBeLessThanOrEqual(80);
    }
  });
});
