import { type Assessment, situationOf } from '../../../src/call/assess.js';
import type { CallEvent } from '../../../src/call/events.js';
import { reduce } from '../../../src/call/reduce.js';
import type { CallState } from '../../../src/call/state.js';
import { inWords } from '../../../src/messages/say.js';
import type { Model } from '../../../src/ranking/model.js';
import type { RuleBase } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';
import { quickAssess } from './quick-assess.js';

/** A state and what follows from it. */
export interface Seen {
  readonly state: CallState;
  readonly assessed: Assessment;
  readonly situation: Situation;
}

/** What follows from a state. */
export function see(rules: RuleBase, model: Model, state: CallState): Seen {
  const assessed = quickAssess(rules, model, state);
  return { state, assessed, situation: situationOf(rules, state, assessed) };
}

type Happening = CallEvent extends infer E ? (E extends CallEvent ? Omit<E, 'at'> : never) : never;

/** The state after an event. Throws on one that does not fit the rule base. */
export function happen(rules: RuleBase, { state, assessed }: Seen, happening: Happening): CallState {
  const event: CallEvent = { at: state.header.opened, ...happening };
  const reduced = reduce(rules, state, event, assessed);
  if (!reduced.ok) throw new Error(inWords(reduced.problem));
  return reduced.value;
}
