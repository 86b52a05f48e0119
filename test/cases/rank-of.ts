import type { RawAnswer } from '../../src/answers/answer.js';
import { assess } from '../../src/call/assess.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT } from '../../src/call/events.js';
import { reduce } from '../../src/call/reduce.js';
import { freshState } from '../../src/call/state.js';
import { VERSION } from '../../src/call/version.js';
import { inWords } from '../../src/messages/say.js';
import { modelOf } from '../../src/ranking/model.js';
import type { RuleBase } from '../../src/rulebase/records.js';

export interface Placed {
  /** 1 for the likeliest. */
  readonly rank: number;
  readonly leader: string;
}

/** The place of a cause in the ranking when a caller has given all these answers at once. */
export async function rankOf(
  rules: RuleBase,
  cause: string,
  answers: Readonly<Record<string, RawAnswer>>,
): Promise<Placed> {
  const at = '2026-11-25T09:00:00.000Z';
  const header: CallHeader = {
    ...{ record: RECORD_FORMAT, id: 'case', opened: at, whydark: VERSION },
    ...{ rules: { version: rules.manifest.version, digest: '' }, role: 'desk' },
  };
  const model = modelOf(rules);
  let state = freshState(header);
  const empty = await assess(rules, model, state);
  for (const [question, answer] of Object.entries(answers)) {
    const event: CallEvent = { at, type: 'answered', question, answer, origin: 'said' };
    const reduced = reduce(rules, state, event, empty);
    if (!reduced.ok) throw new Error(`${cause}, ${question}: ${inWords(reduced.problem)}`);
    state = reduced.value;
  }
  const { probabilities } = await assess(rules, model, state);
  const own = probabilities[model.hypotheses.findIndex(({ id }) => id === cause)] ?? 0;
  const lead = probabilities.indexOf(Math.max(...probabilities));
  return { rank: probabilities.filter((p) => p > own).length + 1, leader: model.hypotheses[lead]?.id ?? '' };
}
