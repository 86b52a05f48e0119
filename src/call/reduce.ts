import { type Answer, isCantTell, type RawAnswer } from '../answers/answer.js';
import { parseAnswer } from '../answers/parse-answer.js';
import { isAway } from '../findings/silent.js';
import { factorsWhenBack, factorsWhenStillDark } from '../ranking/after-remedy.js';
import { explainedBy } from '../ranking/explained.js';
import type { FindingId, PlaceId, Question, QuestionId, Remedy, RuleBase } from '../rulebase/records.js';
import { placeAfter } from '../steps/ways.js';
import { ok, problem, type Result } from '../values/result.js';
import type { Assessment } from './assess.js';
import type { CallEvent } from './events.js';
import { knownOf } from './known-of.js';
import { type CallState, READ_BACK } from './state.js';

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
  switch (event.type) {
    case 'answered':
      return answered(rules, state, event);
    case 'pasted':
      return pasted(rules, state, event);
    case 'agreed':
      return agreed(state, event.question);
    case 'noted':
      return ok({ ...state, notes: [...state.notes, event.text] });
    case 'tried':
      return tried(rules, state, event, assessed);
    case 'passed-over':
      return ok({ ...state, passed: plus(state.passed, event.step) });
    case 'kept':
      return ok(kept(state, event.contradiction, assessed));
    case 'tester-dealt':
      return testerDealt(rules, state, event);
    case 'moved':
      return moved(rules, state, event.place);
    case 'closed':
      return ok({ ...state, closed: event.how });
    default:
      return ok(state);
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
    readonly line?: number;
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
    ...(event.line === undefined ? {} : { line: event.line }),
  };
  const answers = new Map(state.answers).set(question.id, answer);
  return ok({
    ...state,
    answers,
    history: [...state.history, answer],
    askedBefore: plus(state.askedBefore, question.id),
    here: placeAfter(rules.manifest, state.here, placeOf(question, answer) ?? question.place),
    lastStage: question.stage,
    kept: keptWithout(state, [question.id]),
    spent: spentWithout(rules, state, question.id),
  });
}

/** All answers of a paste or none: one that does not fit refuses the whole. Nobody walks for what stands in a text. */
function pasted(
  rules: RuleBase,
  state: CallState,
  { paste, origin, answers, note }: Extract<CallEvent, { type: 'pasted' }>,
): Result<CallState> {
  let next = state;
  for (const { question, answer, line } of answers) {
    const taken = answered(rules, next, { question, answer, origin, paste, line });
    if (!taken.ok) return taken;
    next = taken.value;
  }
  const { lastStage: _, ...taken } = next;
  const { here, lastStage } = state;
  const notes = note === undefined ? state.notes : [...state.notes, note];
  return ok({ ...taken, here, notes, ...(lastStage === undefined ? {} : { lastStage }) });
}

/** What is said anew is seen anew: a finding that rests on it speaks again. */
function spentWithout(rules: RuleBase, { spent }: CallState, question: QuestionId): ReadonlySet<FindingId> {
  const fresh = rules.findings.filter(({ asks }) => asks.includes(question)).map(({ id }) => id);
  return new Set([...spent].filter((id) => !fresh.includes(id)));
}

function keptWithout({ kept }: CallState, questions: readonly QuestionId[]): CallState['kept'] {
  return new Map([...kept].filter(([, between]) => !between.some((id) => questions.includes(id))));
}

function moved(rules: RuleBase, state: CallState, place: PlaceId): Result<CallState> {
  return rules.manifest.places.some(({ id }) => id === place)
    ? ok({ ...state, here: placeAfter(rules.manifest, state.here, place) })
    : problem({ id: 'call.unknown-place', with: { place } });
}

function placeOf(question: Question, { value }: Answer): PlaceId | undefined {
  if (value.kind !== 'choice' || !('choices' in question.answer)) return undefined;
  return question.answer.choices.find(({ id }) => id === value.id)?.place;
}

function agreed(state: CallState, question: QuestionId): Result<CallState> {
  const answer = state.answers.get(question);
  if (!answer) return problem({ id: 'call.nothing-to-agree', with: { question } });
  // What was pasted or read from the computer is surer than what somebody agrees to.
  const origin = answer.origin === 'said' ? 'agreed' : answer.origin;
  return ok({ ...state, answers: new Map(state.answers).set(question, { ...answer, origin }) });
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
  const wasThere = isAway(rules, assessed.settled);
  const done: CallState = {
    ...state,
    trials: [...state.trials, { remedy: remedy.id, took, picture, ...(wasThere ? { wasThere } : {}) }],
    tried: new Map(state.tried).set(remedy.id, knownOf(remedy, assessed.settled.facts)),
    here: placeAfter(rules.manifest, state.here, remedy.place),
  };
  const hypotheses = assessed.model.hypotheses.map(({ id }) => id);
  if (picture === 'yes') {
    // A picture that never went says nothing of what was done.
    if (wasThere) return ok({ ...done, restoredBy: remedy.id });
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

/**
 * The remedy took and the picture is still dark: what it changed is asked anew, what it explained is spent.
 * An answer on which a changed finding would rest is stale even where the finding was not known yet.
 */
function newEpoch(rules: RuleBase, state: CallState, remedy: Remedy, assessed: Assessment): CallState {
  const struck = remedy.mends.map(({ cause }) => cause).filter((cause) => state.factors.get(cause) === 0);
  const explained = wereLikely(assessed, struck)
    ? explainedBy(rules, assessed.model, assessed.evidence, struck)
    : [];
  const changed = rules.findings.filter(({ id }) => remedy.changes.includes(id));
  const behind = changed.flatMap(({ id, asks }) => [
    ...asks,
    ...(assessed.settled.findings.get(id)?.basis ?? []),
  ]);
  const stale = behind.filter((id) => !isCantTell(state.answers.get(id)));
  const spent = new Set([...state.spent, ...explained].filter((id) => !remedy.changes.includes(id)));
  return { ...state, ...withoutAnswers(state, stale), spent, epoch: state.epoch + 1 };
}

/**
 * Whether the struck causes were likelier there than not. If they were not, the remedy most likely mended nothing,
 * and what they would have explained still speaks of the fault that is there.
 */
function wereLikely({ model, probabilities }: Assessment, struck: readonly string[]): boolean {
  const share = model.hypotheses.reduce(
    (sum, { id }, h) => sum + (struck.includes(id) ? (probabilities[h] ?? 0) : 0),
    0,
  );
  return share >= 0.5;
}

function kept(state: CallState, contradiction: string, assessed: Assessment): CallState {
  const between = contradiction.startsWith(READ_BACK)
    ? [contradiction.slice(READ_BACK.length)]
    : (assessed.conflicts.find(({ id }) => id === contradiction)?.between ?? []);
  return {
    ...state,
    kept: new Map(state.kept).set(contradiction, between),
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

function withoutAnswers(
  state: CallState,
  questions: readonly QuestionId[],
): Pick<CallState, 'answers' | 'kept'> {
  const answers = new Map(state.answers);
  for (const question of questions) answers.delete(question);
  return { answers, kept: keptWithout(state, questions) };
}

function plus<T>(set: ReadonlySet<T>, one: T): ReadonlySet<T> {
  return new Set(set).add(one);
}
