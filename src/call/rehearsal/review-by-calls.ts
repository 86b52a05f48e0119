import { type RuleFault, warning } from '../../rulebase/fault.js';
import { fileOf } from '../../rulebase/layout.js';
import { mentions } from '../../rulebase/mentions.js';
import type { QuestionId, RemedyId, RuleBase } from '../../rulebase/records.js';
import { questionsBehind } from '../../steps/open-questions.js';
import { worthAsking } from '../../steps/orders.js';
import type { Call } from '../call.js';
import { rehearse } from './rehearse.js';
import { isAskedBeforeATry, isAskedOfACheck, isTriedForItsFaults } from './tried-for-its-faults.js';

/** Share of wrong answers, and of those that nobody can tell, as the design takes callers to be. */
const WRONG = 0.05;
const CANT_TELL = 0.15;
/** From this call on it is also counted what was worth asking, though another question was asked. */
const WATCHED_FROM = 200;
/** From this call on what none has tried, or asked before a try or of a check, gets calls of its own: the rarest takes minutes. */
const OWN_FROM = 350;
/** Calls with what it mends, for a remedy so rare that chance alone may have kept it from the others. */
const CALLS_OF_ITS_OWN = 120;

/**
 * Questions that were worth asking in none of so many rehearsed calls, nor asked before a remedy in calls with what it
 * mends, nor of a check in calls with people who make it wrongly, and remedies that were tried in none, nor stood on the
 * list of a visit at the end, neither in these nor in further calls with what they mend.
 * Half of the calls are with callers who know everything, half with such as get it wrong; in a quarter of
 * them causes come as often as in the world, in the others in turn, so that rare ones are rehearsed too.
 * It ends where nothing is left to see; a rule base in order seldom needs all of them.
 */
export async function reviewByCalls(
  rules: RuleBase,
  digest: string,
  calls: number,
): Promise<readonly RuleFault[]> {
  const notAsked = new Set(rules.questions.map(({ id }) => id));
  const notTried = new Set(rules.remedies.map(({ id }) => id));
  const before = ({ step, situation }: Call): void => {
    // What comes first in every call needs no worth, and before that nothing is weighed.
    if (step.kind === 'ask' && step.purpose.kind === 'opening') return;
    for (const id of worthAsking(situation, notAsked)) notAsked.delete(id);
  };
  const weighed = askedForFindings(rules);
  for (let seed = 1; seed <= calls && notAsked.size + notTried.size > 0; seed++) {
    if (seed === OWN_FROM) await byTheirFaults(rules, digest, notTried, notAsked);
    const callers = seed % 2 === 0 ? { wrong: WRONG, cantTell: CANT_TELL } : {};
    // One further each round, so that each cause meets both kinds of callers.
    const round = Math.floor(seed / rules.causes.length);
    const inTurn = rules.causes[(seed + round) % rules.causes.length]?.id;
    const cause = seed % 4 === 0 || inTurn === undefined ? {} : { cause: inTurn };
    // By then few are left, and to look whether those are worth asking costs little.
    const isWatched = seed > WATCHED_FROM && [...notAsked].some((id) => weighed.has(id));
    const watch = isWatched ? { before } : {};
    const call = await rehearse(rules, digest, seed, { ...callers, ...cause, ...watch });
    for (const id of call.asked) notAsked.delete(id);
    for (const id of [...call.tried, ...call.leftToDo]) notTried.delete(id);
  }
  if (calls < OWN_FROM) await byTheirFaults(rules, digest, notTried, notAsked);
  return [
    ...rules.questions
      .filter(({ id }) => notAsked.has(id))
      .map(({ id, stage }) =>
        warning(fileOf('questions', id, stage), '', { id: 'review.never-asked', with: { calls } }),
      ),
    ...rules.remedies
      .filter(({ id }) => notTried.has(id))
      .map(({ id, stage }) =>
        warning(fileOf('remedies', id, stage), '', {
          id: 'review.never-tried',
          with: { calls, own: CALLS_OF_ITS_OWN },
        }),
      ),
  ];
}

/** The questions that the look-ahead can come to: others are asked for a gate or a spoilt check only. */
function askedForFindings(rules: RuleBase): ReadonlySet<QuestionId> {
  const whens = rules.questions.flatMap(({ when }) => (when ? mentions(when) : []));
  const asked = [...rules.findings.flatMap(({ asks }) => asks), ...whens];
  return new Set(asked.flatMap((id) => questionsBehind(rules, id)));
}

/** Takes out what is tried, or asked before something is tried, in calls with what that mends, or asked of a check. */
async function byTheirFaults(
  rules: RuleBase,
  digest: string,
  notTried: Set<RemedyId>,
  notAsked: Set<QuestionId>,
): Promise<void> {
  for (const remedy of rules.remedies) {
    if (notTried.has(remedy.id) && (await isTriedForItsFaults(rules, digest, remedy, CALLS_OF_ITS_OWN)))
      notTried.delete(remedy.id);
  }
  for (const question of [...notAsked]) {
    const isAsked =
      (await isAskedBeforeATry(rules, digest, question, CALLS_OF_ITS_OWN)) ||
      (await isAskedOfACheck(rules, digest, question, CALLS_OF_ITS_OWN));
    if (isAsked) notAsked.delete(question);
  }
}
