import { describe, expect, it } from 'vitest';
import { inWords } from '../../../src/messages/say.js';
import { modelOf } from '../../../src/ranking/model.js';
import { review } from '../../../src/ranking/review/review.js';
import type { RuleBase } from '../../../src/rulebase/records.js';
import { cause, finding, oneOf, question, remedy, ruleBase } from '../literals.js';

const look = question('look', { answer: oneOf('lit', 'dark') });
const light = finding('light', 'look', { lit: 0.8, dark: 0.2 });
const told = [
  cause('out', { signs: { light: { dark: 'always' } }, prior: 100 }),
  cause('on', { signs: { light: { lit: 'always' } }, prior: 100 }),
];
const base = (over: Partial<RuleBase> = {}) =>
  ruleBase({ questions: [look], findings: [light], causes: told, remedies: [], ...over });
const ids = (rules: RuleBase) => review(rules, modelOf(rules)).map(({ says }) => says.id);

describe('the review of a rule base', () => {
  it('finds nothing where causes are told apart', () => {
    expect(ids(base())).toEqual([]);
  });

  it('finds two causes that nothing tells apart, once, in words', () => {
    const rules = base({ causes: [...told, cause('out-too', { signs: { light: { dark: 'always' } } })] });
    const found = review(rules, modelOf(rules)).filter(({ says }) => says.id === 'review.confusable');
    expect(found.map(({ file }) => file)).toEqual(['causes/power/out.json']);
    expect(found.map(({ says }) => inWords(says)).join()).toContain('out-too');
  });

  const alike = [...told, cause('out-too', { signs: { light: { dark: 'always' } }, prior: 9 })];
  const declared = (chance: string) =>
    base({
      causes: alike.map((one) =>
        one.id === 'out' ? { ...one, sameRemedy: [{ cause: 'out-too', remedy: 'plug' }] } : one,
      ),
      remedies: [
        remedy('plug', {
          mends: [
            { cause: 'out', chance: 'always' },
            { cause: 'out-too', chance },
          ],
        }),
      ],
    });

  it('takes one remedy for both as reason enough, where it cures both', () => {
    expect(ids(declared('mostly'))).not.toContain('review.confusable');
    expect(ids(declared('mostly'))).not.toContain('review.same-remedy-weak');
    expect(ids(declared('half'))).toContain('review.same-remedy-weak');
  });

  it('finds a declaration that nothing needs', () => {
    const rules = base({
      causes: told.map((one) =>
        one.id === 'out' ? { ...one, sameRemedy: [{ cause: 'on', remedy: 'plug' }] } : one,
      ),
      remedies: [remedy('plug', { mends: told.map(({ id }) => ({ cause: id, chance: 'always' })) })],
    });
    expect(ids(rules)).toEqual(['review.same-remedy-idle']);
  });

  it('finds a cause that never leads', () => {
    const rules = base({
      causes: [...told, cause('shadow', { signs: { light: { dark: 'half' } }, prior: 1 })],
    });
    const found = review(rules, modelOf(rules)).filter(({ says }) => says.id === 'review.never-first');
    expect(found.map(({ file }) => file)).toEqual(['causes/power/shadow.json']);
  });

  it('finds two findings that one answer sets alike, unless one repeats the other', () => {
    const glow = finding('glow', 'look', { lit: 0.8, dark: 0.2 });
    expect(ids(base({ findings: [light, glow] }))).toContain('review.same-information');
    const repeat = { ...glow, repeats: { finding: 'light', agrees: { lit: ['lit'], dark: ['dark'] } } };
    expect(ids(base({ findings: [light, repeat] }))).not.toContain('review.same-information');
  });

  it('wants a reason where a cause shows the contrary of its stage, and only there', () => {
    const spoken = { ...light, defaults: [{ from: 'power', to: 'power', sign: { dark: 'mostly' } }] };
    const silent = base({ findings: [spoken] });
    const found = review(silent, modelOf(silent));
    expect(found.map(({ file, pointer }) => `${file} ${pointer}`)).toEqual([
      'causes/power/on.json /signs/light',
    ]);
    const because = { light: 'It has a lamp of its own.' };
    expect(
      ids(
        base({
          findings: [spoken],
          causes: told.map((one) => (one.id === 'on' ? { ...one, because } : one)),
        }),
      ),
    ).toEqual([]);
    expect(ids(base({ causes: told.map((one) => ({ ...one, because })) }))).toEqual([
      'review.idle-because',
      'review.idle-because',
    ]);
  });

  it('wants a published source opened, or said to be from memory', () => {
    const withSource = (source: (typeof told)[number]['source']) =>
      ids(base({ causes: told.map((one) => (one.id === 'on' ? { ...one, source } : one)) }));
    expect(withSource({ title: 'RFC 1122', section: '3.3.1' })).toEqual(['review.source-unopened']);
    expect(withSource({ title: 'RFC 1122', section: '3.3.1', opened: 'text' })).toEqual([]);
    expect(withSource({ title: 'RFC 1122', section: '3.3.1, from memory' })).toEqual([]);
  });

  it('finds a prompt that takes more than one breath', () => {
    const rules = base({ questions: [{ ...look, prompt: 'word '.repeat(31).trim() }] });
    expect(ids(rules)).toEqual(['review.long-prompt']);
  });
});
