import { readFileSync } from 'node:fs';
import { type Call, replay } from '../../src/call/call.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT } from '../../src/call/events.js';
import { VERSION } from '../../src/call/version.js';

const rules = JSON.parse(readFileSync('dist/rules.json', 'utf8'));
const digest = readFileSync('dist/rules.digest', 'utf8').trim();
const AT = '2026-11-25T09:00:00.000Z';

export const HEADER: CallHeader = {
  record: RECORD_FORMAT,
  id: 'hostile',
  opened: AT,
  whydark: VERSION,
  rules: { version: rules.manifest.version, digest },
  role: 'desk',
};

/** The questions that take words as they are typed. */
export const TEXT_QUESTIONS: readonly string[] = rules.questions
  .filter(({ answer }: { answer: { type: string } }) => answer.type === 'text')
  .map(({ id }: { id: string }) => id);

const answered = (question: string, answer: string): CallEvent => ({
  at: AT,
  type: 'answered',
  question,
  answer,
  origin: 'said',
});

/** The events of a call in which these words stand wherever words can be typed; addresses besides. */
export function eventsWith(
  words: (at: number) => string,
  addresses: readonly string[] = [],
): readonly CallEvent[] {
  const [camera = '172.23.40.21', gateway = '172.23.99.1'] = addresses;
  return [
    answered('may-ask', 'yes'),
    answered('camera-type', 'wired'),
    answered('port-light', 'dark'),
    answered('camera-address', camera),
    answered('camera-mask', '255.255.255.0'),
    answered('camera-gateway', gateway),
    ...TEXT_QUESTIONS.map((id, at) => answered(id, words(at))),
    { at: AT, type: 'noted', text: words(90) },
    { at: AT, type: 'noted', text: words(91) },
    answered('their-words', words(92)),
  ];
}

/** The call after these events. */
export async function callWith(events: readonly CallEvent[]): Promise<Call> {
  const result = await replay(rules, digest, HEADER, events, { opening: 'skipped' });
  if (!result.ok) throw new Error(result.problem.id);
  return result.value;
}
