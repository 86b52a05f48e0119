import type { RawAnswer } from '../../../src/answers/answer.js';
import type { Model } from '../../../src/ranking/model.js';
import type { CauseId, QuestionId, RuleBase } from '../../../src/rulebase/records.js';
import { visitMinutes } from '../../../src/steps/ways.js';
import { happen, type Seen, see } from './happen.js';
import type { Opened } from './opened.js';
import type { Action, NamedPolicy } from './policy.js';
import { leaderOf } from './suspicion.js';
import { READ_BACK_MINUTES, type Tally, withStep } from './tally.js';

/** How a call went under a policy. */
export interface Held extends Tally {
  readonly policy: string;
  readonly cause: CauseId;
  /** Questions after the opening, until the picture was back or somebody was sent. */
  readonly questions: number;
  readonly isVisit: boolean;
  /** The cause that leads at the end, and how likely it then is. */
  readonly leader: CauseId;
  readonly probability: number;
  /** The true cause leads at the end, or a remedy that mends it brought the picture back. */
  readonly isFound: boolean;
}

/** A call longer than this goes round in circles. */
const LONGEST = 300;

/**
 * Holds the rest of an opened call by a policy. Of two answers that contradict each other the slip is put right, if
 * the caller sees it; else both are kept. Spoilt checks are left. Throws where the call never ends.
 */
export function hold(rules: RuleBase, model: Model, begun: Opened, named: NamedPolicy, cause: CauseId): Held {
  const policy = named.policyFor(begun.script);
  let { state, tally } = begun;
  for (let step = 0; step < LONGEST; step++) {
    const seen = see(rules, model, state);
    if (state.restoredBy !== undefined) return ended(seen, tally);
    const left = leftStanding(rules, seen, begun);
    if (left) {
      state = left;
      continue;
    }
    const action = policy(seen.situation, state.askedBefore);
    if (action.kind === 'visit') {
      const minutes = tally.minutes + visitMinutes(rules.manifest);
      return ended(seen, { ...tally, minutes });
    }
    tally = after(rules, tally, state.here, action);
    state = happen(rules, seen, happeningOf(action, begun, seen));
  }
  throw new Error(`${named.name}: a call with ${cause} never ends`);

  function ended({ state: last, situation }: Seen, cost: Tally): Held {
    const at = leaderOf(situation);
    const leader = model.hypotheses[at]?.id ?? '';
    return {
      ...cost,
      ...{ policy: named.name, cause, leader, probability: situation.probabilities[at] ?? 0 },
      questions: cost.questions - begun.tally.questions,
      isVisit: last.restoredBy === undefined,
      isFound: named.knows === true || last.restoredBy !== undefined || leader === cause,
    };
  }
}

function leftStanding(rules: RuleBase, seen: Seen, { script }: Opened): Seen['state'] | undefined {
  const { left } = seen.situation;
  const conflict = seen.assessed.conflicts.find(({ id }) => !left.has(id));
  const slip = conflict?.between.find((one) => correctionOf(script, one, seen) !== undefined);
  if (slip !== undefined) return happen(rules, seen, correction(script, slip));
  if (conflict) return happen(rules, seen, { type: 'kept', contradiction: conflict.id });
  const fault = seen.assessed.settled.testerFaults.find((id) => !left.has(id));
  return fault === undefined
    ? undefined
    : happen(rules, seen, { type: 'tester-dealt', fault, outcome: 'left' });
}

/** What a second look shows, unless it has been taken. */
function correctionOf(
  { secondThoughts = {} }: Opened['script'],
  question: QuestionId,
  { situation }: Seen,
): RawAnswer | undefined {
  return situation.revised.has(question) ? undefined : secondThoughts[question];
}

function correction({ secondThoughts = {} }: Opened['script'], question: QuestionId): Happening {
  return { type: 'answered', question, answer: secondThoughts[question] ?? null, origin: 'said' };
}

type Happening = Parameters<typeof happen>[2];
type Doing = Exclude<Action, { readonly kind: 'visit' }>;

function after(rules: RuleBase, tally: Tally, here: string, action: Doing): Tally {
  if (action.kind === 'read-back') return { ...tally, minutes: tally.minutes + READ_BACK_MINUTES };
  const step =
    action.kind === 'ask'
      ? rules.questions.find(({ id }) => id === action.question)
      : rules.remedies.find(({ id }) => id === action.remedy);
  if (!step) throw new Error('a step that the rule base does not know');
  return withStep(tally, rules.manifest, here, step, action.kind === 'ask' ? 'questions' : 'remedies');
}

function happeningOf(action: Doing, { script }: Opened, seen: Seen): Happening {
  if (action.kind === 'read-back') {
    const isSlip = correctionOf(script, action.question, seen) !== undefined;
    return isSlip ? correction(script, action.question) : { type: 'agreed', question: action.question };
  }
  if (action.kind === 'ask') {
    const answer = script.answers[action.question] ?? null;
    return { type: 'answered', question: action.question, answer, origin: 'said' };
  }
  const outcome = script.remedies[action.remedy];
  return outcome
    ? { type: 'tried', remedy: action.remedy, ...outcome }
    : { type: 'passed-over', step: `try:${action.remedy}` };
}
