import type { RuleBase } from '../records.js';
import type { Change } from './changes.js';

/** The part of a version that has to grow: Semantic Versioning 2.0.0, items 6 to 8. */
export type Step = 'major' | 'minor' | 'patch' | 'none';

const STEPS: readonly Step[] = ['none', 'patch', 'minor', 'major'];

/**
 * What a rule base's version must say of its changes. Major: a record is gone, or a value or an answer that
 * records of calls may hold. Minor: something is new, or a condition or a way of asking is another. Patch: words and weights.
 */
export function stepNeeded(older: RuleBase, newer: RuleBase, changes: readonly Change[]): Step {
  const needed = changes.map((change): Step => {
    if (change.what === 'removed') return 'major';
    if (change.what !== 'changed') return 'minor';
    if (losesAnswer(older, newer, change.kind, change.id)) return 'major';
    if (change.fields.rewired.length > 0) return 'minor';
    return change.kind === 'manifest' &&
      onlyItsOwn(change.fields.reworded) &&
      change.fields.reweighed.length === 0
      ? 'none'
      : 'patch';
  });
  return STEPS.findLast((step) => needed.includes(step)) ?? 'none';
}

/** Version and date of the manifest are what is judged here, not a change of the rule base. */
function onlyItsOwn(reworded: readonly string[]): boolean {
  return reworded.every((field) => field === 'version' || field === 'date');
}

/** The step that was taken from one version to another; `undefined` where it went back or stayed. */
export function stepTaken(older: string, newer: string): Step | undefined {
  const [a, b] = [numbers(older), numbers(newer)];
  const at = a.findIndex((one, i) => one !== b[i]);
  if (at === -1) return 'none';
  return (b[at] ?? 0) > (a[at] ?? 0) ? (['major', 'minor', 'patch'] as const)[at] : undefined;
}

/**
 * Whether the newer version says enough. Before 1.0.0 anything may change with the second number (SemVer, item 4).
 */
export function saysEnough(older: string, newer: string, needed: Step): boolean {
  const taken = stepTaken(older, newer);
  if (taken === undefined) return false;
  const isEarly = numbers(newer)[0] === 0;
  const wanted = isEarly && needed === 'major' ? 'minor' : needed;
  return STEPS.indexOf(taken) >= STEPS.indexOf(wanted);
}

function numbers(version: string): readonly number[] {
  return (version.split(/[-+]/)[0] ?? '').split('.').map(Number);
}

function losesAnswer(older: RuleBase, newer: RuleBase, kind: Change['kind'], id: string): boolean {
  if (kind === 'findings') {
    const [was, is] = [older, newer].map((base) => base.findings.find((one) => one.id === id)?.values ?? {});
    return Object.keys(was ?? {}).some((value) => !Object.hasOwn(is ?? {}, value));
  }
  if (kind !== 'questions') return false;
  const [was, is] = [older, newer].map((base) => base.questions.find((one) => one.id === id)?.answer);
  if (!was || !is || was.type !== is.type) return true;
  const choices = 'choices' in is ? is.choices : [];
  return 'choices' in was && was.choices.some((choice) => !choices.some((one) => one.id === choice.id));
}
