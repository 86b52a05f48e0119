import { RECORD_FORMAT } from '../../../src/call/events.js';
import type { Script } from '../../../src/call/scripted-call.js';
import { type CallState, freshState } from '../../../src/call/state.js';
import { VERSION } from '../../../src/call/version.js';
import { holds } from '../../../src/findings/holds.js';
import type { Model } from '../../../src/ranking/model.js';
import type { Question, RuleBase } from '../../../src/rulebase/records.js';
import { canDo } from '../../../src/steps/open-questions.js';
import type { Situation } from '../../../src/steps/situation.js';
import { happen, see } from './happen.js';
import { NOTHING_YET, type Tally, withStep } from './tally.js';

/** A call whose opening is over: the same for every policy. */
export interface Opened {
  readonly script: Script;
  readonly state: CallState;
  readonly tally: Tally;
}

/** Asks the opening, in its order; conditions that are not known to hold skip a question. */
export function opened(rules: RuleBase, model: Model, script: Script): Opened {
  let state = freshState({
    ...{ record: RECORD_FORMAT, id: 'bench', opened: script.opened, whydark: VERSION },
    ...{ rules: { version: rules.manifest.version, digest: '' }, role: script.role },
  });
  let tally = NOTHING_YET;
  for (;;) {
    const seen = see(rules, model, state);
    const question = nextOfOpening(seen.situation);
    if (!question) return { script, state, tally };
    tally = withStep(tally, rules.manifest, state.here, question, 'questions');
    const answer = script.answers[question.id] ?? null;
    state = happen(rules, seen, { type: 'answered', question: question.id, answer, origin: 'said' });
  }
}

function nextOfOpening(situation: Situation): Question | undefined {
  const { rules, askedBefore, settled } = situation;
  return rules.questions
    .filter(({ id, opening }) => opening !== undefined && !askedBefore.has(id))
    .filter((one) => canDo(situation, one) && (!one.when || holds(one.when, settled.facts) === true))
    .sort((a, b) => (a.opening ?? 0) - (b.opening ?? 0))[0];
}
