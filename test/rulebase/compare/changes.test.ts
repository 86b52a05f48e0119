import { describe, expect, it } from 'vitest';
import { type Change, changesBetween } from '../../../src/rulebase/compare/changes.js';
import { saysEnough, stepNeeded, stepTaken } from '../../../src/rulebase/compare/version.js';
import type { RuleBase } from '../../../src/rulebase/records.js';
import { cause, finding, oneOf, question, remedy, ruleBase } from '../../ranking/literals.js';

const OLD = ruleBase({
  questions: [question('look', { answer: oneOf('lit', 'dark') })],
  findings: [finding('light', 'look', { lit: 0.8, dark: 0.2 })],
  causes: [cause('out', { signs: { light: { dark: 'always' } } })],
  remedies: [remedy('out')],
});

function changesTo(over: Partial<RuleBase>): readonly Change[] {
  return changesBetween(OLD, { ...OLD, ...over });
}
const needed = (over: Partial<RuleBase>) => stepNeeded(OLD, { ...OLD, ...over }, changesTo(over));
const fields = (change: Change | undefined) => (change?.what === 'changed' ? change.fields : undefined);

describe('what changed between two rule bases', () => {
  it('is nothing between a rule base and itself', () => {
    expect(changesTo({})).toEqual([]);
    expect(needed({})).toBe('none');
  });

  it('names records added and removed', () => {
    const changes = changesTo({ causes: [cause('in')] });
    expect(changes).toEqual([
      { kind: 'causes', id: 'in', what: 'added' },
      { kind: 'causes', id: 'out', what: 'removed' },
    ]);
  });

  it.each<
    [
      string,
      Partial<RuleBase>,
      Partial<Record<'reworded' | 'reweighed' | 'rewired', readonly string[]>>,
      string,
    ]
  >([
    [
      'a title',
      { causes: [cause('out', { ...OLD.causes[0], title: 'unplugged' })] },
      { reworded: ['title'] },
      'patch',
    ],
    [
      'a prior',
      { causes: [cause('out', { ...OLD.causes[0], prior: 11 })] },
      { reweighed: ['prior'] },
      'patch',
    ],
    [
      'a sign',
      { causes: [cause('out', { ...OLD.causes[0], signs: { light: { dark: 'mostly' } } })] },
      { reweighed: ['signs.light.dark'] },
      'patch',
    ],
    [
      'a usual share',
      { findings: [finding('light', 'look', { lit: 0.7, dark: 0.3 })] },
      { reweighed: ['values.lit.usual', 'values.dark.usual'] },
      'patch',
    ],
    [
      'the chance of a remedy',
      { remedies: [remedy('out', { mends: [{ cause: 'out', chance: 'half' }] })] },
      { reweighed: ['mends.out.chance'] },
      'patch',
    ],
    [
      'a step of a remedy',
      { remedies: [remedy('out', { steps: ['Do that.'] })] },
      { reworded: ['steps.0'] },
      'patch',
    ],
    [
      'where a remedy is done',
      { remedies: [remedy('out', { place: 'camera' })] },
      { rewired: ['place'] },
      'minor',
    ],
    [
      'one more choice',
      { questions: [question('look', { answer: oneOf('lit', 'dark', 'blinks') })] },
      { rewired: ['answer.choices.blinks'] },
      'minor',
    ],
    [
      'one choice less',
      { questions: [question('look', { answer: oneOf('lit') })] },
      { rewired: ['answer.choices.dark'] },
      'major',
    ],
    [
      'another kind of answer',
      { questions: [question('look')] },
      { rewired: ['answer.type', 'answer.choices'] },
      'major',
    ],
  ])('tells %s apart by what it does', (_, over, expected, step) => {
    const [change, ...others] = changesTo(over);
    expect(others).toEqual([]);
    expect(fields(change)).toEqual({ reworded: [], reweighed: [], rewired: [], ...expected });
    expect(needed(over)).toBe(step);
  });

  it('sees that the same ids stand in another order', () => {
    const asking = (...askBefore: readonly string[]) =>
      ruleBase({ ...OLD, remedies: [remedy('out', { askBefore })] });
    const [change, ...others] = changesBetween(asking('look', 'listen'), asking('listen', 'look'));
    expect(others).toEqual([]);
    expect(fields(change)).toEqual({ reworded: [], reweighed: [], rewired: ['askBefore'] });
  });

  it('wants the first number raised for a record or a value that is gone, the second for one that came', () => {
    expect(needed({ causes: [] })).toBe('major');
    expect(needed({ causes: [...OLD.causes, cause('in')] })).toBe('minor');
    expect(needed({ findings: [finding('light', 'look', { lit: 1 })] })).toBe('major');
  });

  it('does not take the version itself for a change', () => {
    expect(needed({ manifest: { ...OLD.manifest, version: '0.0.2', date: '2026-12-01' } })).toBe('none');
  });
});

// Semantic Versioning 2.0.0, items 4, 6, 7, 8 and 10 (semver.org).
describe('whether the version says enough', () => {
  it.each([
    ['1.2.3', '1.2.3', 'none', true],
    ['1.2.3', '1.2.3', 'patch', false],
    ['1.2.3', '1.2.4', 'patch', true],
    ['1.2.3', '1.2.4', 'minor', false],
    ['1.2.3', '1.3.0', 'minor', true],
    ['1.2.3', '1.3.0', 'major', false],
    ['1.2.3', '2.0.0', 'major', true],
    ['1.2.3', '1.2.2', 'none', false],
    ['0.2.0', '0.3.0', 'major', true],
    ['0.2.0', '0.2.1', 'major', false],
    ['0.2.0', '1.0.0', 'major', true],
    ['1.0.0', '1.0.0+desk.2', 'none', true],
  ] as const)('%s to %s for %s: %s', (older, newer, step, enough) => {
    expect(saysEnough(older, newer, step)).toBe(enough);
  });

  it('knows no step back', () => {
    expect(stepTaken('1.0.0', '0.9.9')).toBeUndefined();
  });
});
