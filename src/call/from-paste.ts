import { parseAnswer } from '../answers/parse-answer.js';
import { type Observation, observationsIn } from '../intake/observations.js';
import type { Paste } from '../intake/paste.js';
import { say } from '../messages/say.js';
import type { RuleBase } from '../rulebase/records.js';
import type { Address } from '../values/address.js';
import type { CallEvent, PastedAnswer } from './events.js';
import { keptText } from './kept-text.js';
import { noticed } from './noticed.js';
import type { CallState } from './state.js';

/** Which adapter leads to the camera, and whether the computer is at its place at all. */
export interface AboutPaste {
  readonly adapter?: number;
  readonly isHere: boolean;
}

/** The camera's address as it was answered, if it was. */
export function cameraOf({ answers }: Pick<CallState, 'answers'>, rules: RuleBase): Address | undefined {
  const question = rules.questions.find(({ reads }) => reads === 'camera.address');
  const value = question && answers.get(question.id)?.value;
  return value?.kind === 'address' && value.address.bits !== 0 ? value.address : undefined;
}

/** The answers that a paste gives to the questions of a rule base, in the order of the text. */
export function answersFrom(
  rules: RuleBase,
  { reading }: Paste,
  about: AboutPaste,
  camera: Address | undefined,
): readonly PastedAnswer[] {
  const adapter = about.isHere ? about.adapter : undefined;
  const seen = about.isHere ? reading.seen : elsewhere(reading.seen);
  const sight = { ...(adapter === undefined ? {} : { adapter }), ...(camera ? { camera } : {}) };
  const found = new Map(observationsIn(seen, sight).map((one): [string, Observation] => [one.id, one]));
  return rules.questions
    .flatMap((question): PastedAnswer[] => {
      const one = question.reads === undefined ? undefined : found.get(question.reads);
      return one && parseAnswer(question, one.value).ok
        ? [{ question: question.id, answer: one.value, line: one.line }]
        : [];
    })
    .sort((a, b) => a.line - b.line || (a.question < b.question ? -1 : 1));
}

/** What a computer of another place says of itself and sends out says nothing of this one. */
function elsewhere(seen: Paste['reading']['seen']): Paste['reading']['seen'] {
  const adapters = seen.adapters.filter(({ owner }) => owner !== 'computer');
  return {
    ...seen,
    adapters,
    dns: [],
    neighbours: [],
    routes: [],
    pings: [],
    traces: [],
    ports: [],
    arps: [],
  };
}

/** What comes of a text that was taken, as one event: one thing to take back. */
export type OfPaste = Omit<Extract<CallEvent, { type: 'pasted' }>, 'at'>;

/**
 * The event of a paste; the first of a call is `p1`. What stood out is noted for whoever reads the ticket, but nothing
 * of a computer that is elsewhere.
 */
export function pasteEvent(
  { events }: Pick<CallState, 'events'>,
  paste: Paste,
  answers: readonly PastedAnswer[],
  { isHere }: Pick<AboutPaste, 'isHere'>,
  origin: 'pasted' | 'read' = 'pasted',
): OfPaste {
  const number = events.filter(({ type }) => type === 'pasted').length + 1;
  const { seen } = paste.reading;
  const found = noticed(isHere ? seen : elsewhere(seen)).join(' ');
  const note = found === '' ? {} : { note: keptText(say('paste.note', { found })) };
  return { type: 'pasted', paste: `p${number}`, origin, text: keptText(paste.text), answers, ...note };
}
