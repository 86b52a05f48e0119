import { diagnose } from '../diagnosis/diagnose.js';
import type { Diagnosis } from '../diagnosis/diagnosis.js';
import { type Model, modelOf } from '../ranking/model.js';
import type { RuleBase } from '../rulebase/records.js';
import type { Situation } from '../steps/situation.js';
import type { Step } from '../steps/step.js';
import { ok, problem, type Result } from '../values/result.js';
import { type Assessment, assess, situationOf, stepOf } from './assess.js';
import type { CallEvent, CallHeader } from './events.js';
import { holding, reduce } from './reduce.js';
import { type CallState, freshState } from './state.js';

/** One run of the question engine: where it stands, and what comes next. */
export interface Call {
  readonly rules: RuleBase;
  readonly digest: string;
  readonly state: CallState;
  readonly assessed: Assessment;
  readonly situation: Situation;
  readonly step: Step;
}

/** Opens a call under a rule base. `digest` is the rule base's. */
export function openCall(rules: RuleBase, digest: string, header: CallHeader): Promise<Call> {
  return see(rules, digest, modelOf(rules), freshState(header));
}

/**
 * The call after an event: (state, event) → state and next step. A misfit comes back as a sentence.
 * Taking something back plays the call again without it.
 */
export async function advance(call: Call, event: CallEvent): Promise<Result<Call>> {
  const { rules, digest, state, assessed } = call;
  if (event.type === 'undone') {
    if (state.events.length === 0) return problem({ id: 'call.nothing-to-undo' });
    return replay(rules, digest, state.header, [...state.events, event]);
  }
  const reduced = reduce(rules, state, event, assessed);
  if (!reduced.ok) return reduced;
  return ok(await see(rules, digest, assessed.model, { ...reduced.value, events: [...state.events, event] }));
}

/**
 * The call after all these events, as if they had come one by one: the same record and rule base give the same
 * call. Assesses only where an event looks at the assessment, so that a long record opens at once.
 * A diagnosis without a person skips the opening: what it does not know is asked only where it pays.
 */
export async function replay(
  rules: RuleBase,
  digest: string,
  header: CallHeader,
  events: readonly CallEvent[],
  options: { readonly opening: 'asked' | 'skipped' } = { opening: 'asked' },
): Promise<Result<Call>> {
  const model = modelOf(rules);
  const held = holding(events);
  let state = options.opening === 'asked' ? freshState(header) : withoutOpening(rules, freshState(header));
  let assessed = await assess(rules, model, state);
  for (const event of held) {
    if (event.type === 'tried' || event.type === 'kept') assessed = await assess(rules, model, state);
    const reduced = reduce(rules, state, event, assessed);
    if (!reduced.ok) return reduced;
    state = reduced.value;
  }
  return ok(await see(rules, digest, model, { ...state, events: held }));
}

/** A call never changes, and one step of a face asks for its diagnosis several times. */
const MEMO = new WeakMap<Call, Diagnosis>();

/** The diagnosis as it stands now. */
export function diagnosisOf(call: Call): Diagnosis {
  const known = MEMO.get(call) ?? diagnosed(call);
  MEMO.set(call, known);
  return known;
}

function diagnosed({ state, situation, step, digest }: Call): Diagnosis {
  return diagnose(situation, {
    digest,
    factors: state.factors,
    step,
    ...(state.restoredBy === undefined ? {} : { restoredBy: state.restoredBy }),
    wasThere: state.trials.at(-1)?.wasThere === true,
  });
}

function withoutOpening(rules: RuleBase, state: CallState): CallState {
  const opening = rules.questions.filter((question) => question.opening !== undefined);
  return { ...state, askedBefore: new Set(opening.map(({ id }) => id)) };
}

async function see(rules: RuleBase, digest: string, model: Model, state: CallState): Promise<Call> {
  const assessed = await assess(rules, model, state);
  const situation = situationOf(rules, state, assessed);
  return { rules, digest, state, assessed, situation, step: stepOf(state, situation) };
}
