import { ORIGINS, type Origin, type RawAnswer } from '../answers/answer.js';
import { parseAnswer } from '../answers/parse-answer.js';
import type { Sentence } from '../messages/say.js';
import { nearest } from '../rulebase/did-you-mean.js';
import { parseFiles } from '../rulebase/parse-files.js';
import { pointer } from '../rulebase/pointer.js';
import type { RuleBase } from '../rulebase/records.js';
import type { CallEvent, Role } from './events.js';

/** One thing that is wrong with an answers file, and where. */
export interface Misfit {
  /** JSON pointer. */
  readonly pointer: string;
  readonly says: Sentence;
}

/** What an answers file says, or everything that is wrong with it. */
export type AnswersFile =
  | { readonly ok: true; readonly role: Role; readonly events: readonly CallEvent[] }
  | { readonly ok: false; readonly problems: readonly Misfit[] };

/** The same from its text: JSON (RFC 8259) that breaks is one problem, with line and column. */
export function readAnswersText(rules: RuleBase, text: string, at: string): AnswersFile {
  const { files, faults } = parseFiles([{ file: '', text }]);
  const problems = faults.map(({ pointer: place, says }) => ({ pointer: place, says }));
  return problems.length > 0 ? { ok: false, problems } : readAnswersFile(rules, files[0]?.json, at);
}

/**
 * Reads an answers file: `{"role": "desk" or "site", "answers": {question id: answer or {answer, origin}}}`.
 * `null` is *can't tell*; an answer without an origin was said. `at` stamps the events. All problems at once.
 */
export function readAnswersFile(rules: RuleBase, json: unknown, at: string): AnswersFile {
  if (!isObject(json) || !isObject(json.answers)) {
    return { ok: false, problems: [{ pointer: '', says: { id: 'answers-file.shape' } }] };
  }
  const problems: Misfit[] = Object.keys(json)
    .filter((key) => key !== 'role' && key !== 'answers' && key !== '$schema')
    .map((key) => ({ pointer: pointer(key), says: { id: 'answers-file.unknown-key' } }));
  const role = json.role ?? 'desk';
  if (role !== 'desk' && role !== 'site')
    problems.push({ pointer: '/role', says: { id: 'answers-file.role' } });
  const events: CallEvent[] = [];
  for (const [id, given] of Object.entries(json.answers)) {
    for (const key of isObject(given) ? Object.keys(given) : []) {
      if (key !== 'answer' && key !== 'origin')
        problems.push({ pointer: pointer('answers', id, key), says: { id: 'answers-file.unknown-field' } });
    }
    const event = eventOf(rules, id, given, at);
    if ('id' in event) problems.push({ pointer: pointer('answers', id), says: event });
    else events.push(event);
  }
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, role: role === 'site' ? 'site' : 'desk', events };
}

function eventOf(rules: RuleBase, id: string, given: unknown, at: string): CallEvent | Sentence {
  const question = rules.questions.find((one) => one.id === id);
  if (!question) {
    const hint = nearest(
      id,
      rules.questions.map((one) => one.id),
    );
    if (hint === undefined) return { id: 'answer.unknown-question', with: { question: id } };
    return { id: 'answer.unknown-question-near', with: { question: id, nearest: hint } };
  }
  const detailed = isObject(given);
  const answer = detailed ? given.answer : given;
  const origin = detailed ? (given.origin ?? 'said') : 'said';
  if (!isOrigin(origin))
    return { id: 'answers-file.origin', with: { question: id, origins: ORIGINS.join(', ') } };
  const parsed = parseAnswer(question, answer);
  if (!parsed.ok) return parsed.problem;
  return { at, type: 'answered', question: id, answer: answer as RawAnswer, origin };
}

function isOrigin(value: unknown): value is Origin {
  return ORIGINS.some((origin) => origin === value);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
