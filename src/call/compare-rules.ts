import { inWords } from '../messages/say.js';
import { type Change, changesBetween } from '../rulebase/compare/changes.js';
import { saysEnough, stepNeeded, type Step as VersionStep } from '../rulebase/compare/version.js';
import type { RuleBase } from '../rulebase/records.js';
import type { Step } from '../steps/step.js';
import { advance, diagnosisOf, openCall } from './call.js';
import type { CallEvent, CallHeader } from './events.js';

/** Two rule bases side by side. */
export interface Compared {
  readonly older: string;
  readonly newer: string;
  /** How much the version has to grow for these changes, and whether it did. */
  readonly needed: VersionStep;
  readonly enough: boolean;
  readonly changes: readonly Change[];
}

/** A rule base, and the digest that its records name. */
export interface Rules {
  readonly rules: RuleBase;
  readonly digest: string;
}

/** What changed from one rule base to another, and whether the version says so. */
export function compareRules({ rules: was }: Rules, { rules: is }: Rules): Compared {
  const changes = changesBetween(was, is);
  const needed = stepNeeded(was, is, changes);
  const versions = { older: was.manifest.version, newer: is.manifest.version };
  return { ...versions, needed, enough: saysEnough(versions.older, versions.newer, needed), changes };
}

/** Where a call stands under one rule base; `problem` where its record does not fit. */
export type Standing =
  | {
      readonly verdict: string;
      readonly cause: string | null;
      /** Of the verdict, to a hundredth. */
      readonly probability: number;
      /** What was proposed before each event, and at last. */
      readonly steps: readonly string[];
    }
  | { readonly problem: string };

/** A call under two rule bases. */
export interface Moved {
  readonly older: Standing;
  readonly newer: Standing;
  readonly same: boolean;
}

/** Plays a record under both. */
export async function movedBetween(
  older: Rules,
  newer: Rules,
  header: CallHeader,
  events: readonly CallEvent[],
): Promise<Moved> {
  const [was, is] = [await standing(older, header, events), await standing(newer, header, events)];
  return { older: was, newer: is, same: JSON.stringify(was) === JSON.stringify(is) };
}

/** The first event, counted from 1, before which the two propose something else. */
export function firstOther({ older, newer }: Moved): { at: number; was: string; now: string } | undefined {
  if ('problem' in older || 'problem' in newer) return undefined;
  const at = newer.steps.findIndex((step, i) => step !== older.steps[i]);
  return at === -1 ? undefined : { at: at + 1, was: older.steps[at] ?? '-', now: newer.steps[at] ?? '-' };
}

async function standing(
  { rules, digest }: Rules,
  header: CallHeader,
  events: readonly CallEvent[],
): Promise<Standing> {
  let call = await openCall(rules, digest, { ...header, rules: { version: rules.manifest.version, digest } });
  const steps = [stepKey(call.step)];
  for (const event of events) {
    // The last word of a closed call hides what would come next.
    if (event.type === 'closed') continue;
    const next = await advance(call, event);
    if (!next.ok) return { problem: inWords(next.problem) };
    call = next.value;
    steps.push(stepKey(call.step));
  }
  const { verdict } = diagnosisOf(call);
  const probability = Math.round(verdict.probability * 100) / 100;
  return { verdict: verdict.kind, cause: verdict.cause ?? null, probability, steps };
}

function stepKey(step: Step): string {
  switch (step.kind) {
    case 'ask':
    case 'read-back':
      return `${step.kind} ${step.question}`;
    case 'try':
      return `${step.kind} ${step.remedy}`;
    case 'check-answers':
      return `${step.kind} ${step.conflict.id}`;
    case 'spoilt-check':
      return `${step.kind} ${step.fault}`;
    default:
      return step.kind;
  }
}
