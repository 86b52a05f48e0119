import type { Answer, RawAnswer } from '../answers/answer.js';
import { parseAnswer } from '../answers/parse-answer.js';
import { factorsWhenBack, factorsWhenStillDark } from '../ranking/after-remedy.js';
import { explainedBy } from '../ranking/explained.js';
import type { FindingId, PlaceId, Question, QuestionId, Remedy, RuleBase } from '../rulebase/records.js';
import { placeAfter } from '../steps/ways.js';
import { ok, problem, type Result } from '../values/result.js';
import type { Assessment } from './assess.js';
import type { CallEvent } from './events.js';
import { knownOf } from './known-of.js';
import type { CallState } from './state.js';

/**
 * The events that hold: each `undone` takes back the last one before it that still held.
 */
export function holding(events: readonly CallEvent[]): readonly CallEvent[] {
  const held: CallEvent[] = [];
  for (const event of events) {
    if (event.type === 'undone') held.pop();
    else held.push(event);
  }
  return held;
}

/**
 * The state after an event that holds. `assessed` is the assessment of the state before it; only a tried remedy and a kept
 * contradiction look at it. An event that does not fit the rule base comes back as the sentence that says so.
 * Events of kinds this version does not know are kept and change nothing.
 */
export function reduce(
  rules: RuleBase,
  state: CallState,
  event: CallEvent,
  assessed: Assessment,
): Result<CallState> {
  const after = state;
  switch (event.type) {
    case 'answered':
      return answered(rules, after, event);
    case 'agreed':
      return agreed(after, event.question);
    case 'noted':
      return ok({ ...after, notes: [...after.notes, event.text] });
    case 'tried':
      return tried(rules, after, event, assessed);
    case 'passed-over':
      return ok({ ...after, passed: plus(after.passed, event.step) });
    case 'kept':
      return ok(kept(after, event.contradiction, assessed));
    case 'tester-dealt':
      return testerDealt(rules, after, event);
    case 'moved':
      return ok({ ...after, here: event.place });
    case 'closed':
      return ok({ ...after, closed: event.how });
    default:
      return ok(after);
  }
}

function answered(
  rules: RuleBase,
  state: CallState,
  event: {
    readonly question: QuestionId;
    readonly answer: RawAnswer;
    readonly origin: Answer['origin'];
    readonly paste?: string;
  },
): Result<CallState> {
  const question = rules.questions.find(({ id }) => id === event.question);
  if (!question) return problem({ id: 'call.unknown-question', with: { question: event.question } });
  const parsed = parseAnswer(question, event.answer);
  if (!parsed.ok) return parsed;
  const answer: Answer = {
    question: question.id,
    value: parsed.value,
    origin: event.origin,
    ...(event.paste === undefined ? {} : { paste: event.paste }),
  };
  const answers = new Map(state.answers).set(question.id, answer);
  return ok({
    ...state,
    answers,
    history: [...state.history, answer],
    askedBefore: plus(state.askedBefore, question.id),
    here: placeOf(question, answer) ?? placeAfter(state.here, question.place),
    lastStage: question.stage,
    left: minus(state.left, `read-back:${question.id}`),
    disputed: minus(state.disputed, question.id),
  });
}

function placeOf(question: Question, { value }: Answer): PlaceId | undefined {
  if (value.kind !== 'choice' || !('choices' in question.answer)) return undefined;
  return question.answer.choices.find(({ id }) => id === value.id)?.place;
}

function agreed(state: CallState, question: QuestionId): Result<CallState> {
  const answer = state.answers.get(question);
  if (!answer) return problem({ id: 'call.nothing-to-agree', with: { question } });
  return ok({ ...state, answers: new Map(state.answers).set(question, { ...answer, origin: 'agreed' }) });
}

function tried(
  rules: RuleBase,
  state: CallState,
  event: Extract<CallEvent, { type: 'tried' }>,
  assessed: Assessment,
): Result<CallState> {
  const remedy = rules.remedies.find(({ id }) => id === event.remedy);
  if (!remedy) return problem({ id: 'call.unknown-remedy', with: { remedy: event.remedy } });
  const { took, picture } = event;
  const done: CallState = {
    ...state,
    trials: [...state.trials, { remedy: remedy.id, took, picture }],
    tried: new Map(state.tried).set(remedy.id, knownOf(remedy, assessed.settled.facts)),
    here: placeAfter(state.here, remedy.place),
  };
  const hypotheses = assessed.model.hypotheses.map(({ id }) => id);
  if (picture === 'yes') {
    return ok({
      ...done,
      factors: factorsWhenBack(rules.manifest, remedy, hypotheses, state.factors),
      restoredBy: remedy.id,
    });
  }
  const factors = factorsWhenStillDark(rules.manifest, remedy, took, state.factors);
  const next = { ...done, factors };
  return ok(took === 'yes' ? newEpoch(rules, next, remedy, assessed) : next);
}

/** The remedy took and the picture is still dark: what it changed is asked anew, what it explained is spent. */
function newEpoch(rules: RuleBase, state: CallState, remedy: Remedy, assessed: Assessment): CallState {
  const struck = remedy.mends.map(({ cause }) => cause).filter((cause) => state.factors.get(cause) === 0);
  const explained = explainedBy(rules, assessed.model, assessed.evidence, struck);
  const changed = rules.findings.filter(({ id }) => remedy.changes.includes(id));
  const stale = changed.flatMap((finding) => assessed.settled.findings.get(finding.id)?.basis ?? []);
  const spent = new Set<FindingId>([
    ...state.spent,
    ...explained.filter((id) => !remedy.changes.includes(id)),
  ]);
  return { ...state, ...withoutAnswers(state, stale), spent, epoch: state.epoch + 1 };
}

function kept(state: CallState, contradiction: string, assessed: Assessment): CallState {
  const between = assessed.conflicts.find(({ id }) => id === contradiction)?.between ?? [];
  return {
    ...state,
    left: plus(state.left, contradiction),
    disputed: new Set([...state.disputed, ...between]),
  };
}

function testerDealt(
  rules: RuleBase,
  state: CallState,
  event: { readonly fault: string; readonly outcome: 'put-right' | 'left' },
): Result<CallState> {
  const fault = rules['tester-faults'].find(({ id }) => id === event.fault);
  if (!fault) return problem({ id: 'call.unknown-fault', with: { fault: event.fault } });
  if (event.outcome === 'left') return ok({ ...state, left: plus(state.left, fault.id) });
  return ok({ ...state, ...withoutAnswers(state, fault.askAgain) });
}

function withoutAnswers(state: CallState, questions: readonly QuestionId[]): Pick<CallState, 'answers'> {
  const answers = new Map(state.answers);
  for (const question of questions) answers.delete(question);
  return { answers };
}

function plus<T>(set: ReadonlySet<T>, one: T): ReadonlySet<T> {
  return new Set(set).add(one);
}

function minus<T>(set: ReadonlySet<T>, one: T): ReadonlySet<T> {
  const after = new Set(set);
  after.delete(one);
  return after;
}
