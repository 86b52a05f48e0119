import type { Choice, Question } from '../rulebase/records.js';
import { parseAddress } from '../values/address.js';
import { parseMask } from '../values/mask.js';
import { parseMoment } from '../values/moment.js';
import { parseNumber } from '../values/quantity.js';
import { ok, problem, type Result } from '../values/result.js';
import type { AnswerValue } from './answer.js';

const CANT_TELL = /^\s*(can[’']?t[ -]tell|\?)\s*$/i;
const YES = /^\s*(y|yes|true)\s*$/i;
const NO = /^\s*(n|no|false)\s*$/i;

/**
 * What a raw answer means for its question. `null` and "can't tell" are always understood.
 * Whatever else does not fit comes back as the sentence that says what to write instead.
 */
export function parseAnswer(question: Question, raw: unknown): Result<AnswerValue> {
  if (raw === null || (typeof raw === 'string' && CANT_TELL.test(raw))) return ok({ kind: 'cant-tell' });
  const shape = question.answer;
  switch (shape.type) {
    case 'choice':
      return typeof raw === 'string'
        ? parseChoice(question, shape.choices, raw)
        : misfit(question, shape.choices);
    case 'several':
      return parseSeveral(question, shape.choices, raw);
    case 'yes-no':
      return parseYesNo(question, raw);
    case 'text':
      if (typeof raw !== 'string') return problem({ id: 'answer.text', with: { question: question.id } });
      return raw.trim() === '' ? problem({ id: 'answer.empty', with: {} }) : ok({ kind: 'text', text: raw });
    case 'number':
      return parsedFrom(
        question,
        raw,
        (text) => parseNumber(text, shape.unit, shape.min, shape.max),
        (number) => ({
          kind: 'number',
          number,
        }),
      );
    case 'address':
      return parsedFrom(question, raw, parseAddress, (address) => ({ kind: 'address', address }));
    case 'mask':
      return parsedFrom(question, raw, parseMask, (mask) => ({ kind: 'mask', mask }));
    case 'moment':
      return parsedFrom(question, raw, parseMoment, (moment) => ({ kind: 'moment', moment }));
  }
}

function parsedFrom<T>(
  question: Question,
  raw: unknown,
  parse: (text: string) => Result<T>,
  wrap: (value: T) => AnswerValue,
): Result<AnswerValue> {
  if (typeof raw !== 'string' && typeof raw !== 'number') {
    return problem({ id: 'answer.text', with: { question: question.id } });
  }
  const parsed = parse(String(raw));
  return parsed.ok ? ok(wrap(parsed.value)) : parsed;
}

function parseYesNo(question: Question, raw: unknown): Result<AnswerValue> {
  const text = typeof raw === 'string' || typeof raw === 'boolean' ? String(raw) : '';
  if (YES.test(text)) return ok({ kind: 'yes-no', yes: true });
  if (NO.test(text)) return ok({ kind: 'yes-no', yes: false });
  return problem({ id: 'answer.yes-no', with: { question: question.id } });
}

function parseChoice(question: Question, choices: readonly Choice[], raw: string): Result<AnswerValue> {
  const wanted = raw.trim().toLowerCase();
  const choice = choices.find((c) => c.id === wanted || c.title.toLowerCase() === wanted);
  return choice ? ok({ kind: 'choice', id: choice.id }) : misfit(question, choices);
}

function parseSeveral(question: Question, choices: readonly Choice[], raw: unknown): Result<AnswerValue> {
  const given = typeof raw === 'string' ? raw.split(',').filter((part) => part.trim() !== '') : raw;
  if (!Array.isArray(given)) return misfit(question, choices);
  const ids: string[] = [];
  for (const one of given) {
    const parsed = typeof one === 'string' ? parseChoice(question, choices, one) : misfit(question, choices);
    if (!parsed.ok) return parsed;
    if (parsed.value.kind === 'choice' && !ids.includes(parsed.value.id)) ids.push(parsed.value.id);
  }
  return ok({ kind: 'several', ids });
}

function misfit(question: Question, choices: readonly Choice[]): Result<AnswerValue> {
  const list = choices.map((c) => c.id).join(', ');
  return problem({ id: 'answer.choice', with: { question: question.id, choices: list } });
}
