import type { AskedQuestion, Look } from '../types.js';
import { type Answer, CANT_TELL, value } from './eye.js';

/** Shares of answers; judged, no source. */
export const SLIPS = 0.05;
export const SHRUGS = 0.15;

/** Whoever cannot say whether they may ask, or where they are, is not asked further. */
const SURE = new Set(['may-ask', 'at-site']);

/**
 * The look of somebody who errs: one answer in twenty is another valid one, about one in seven becomes `cant-tell`.
 * The same seed and question give the same noise. Pasted text is never wrong, as nobody types it.
 */
export function noisy(look: Look, question: AskedQuestion, seed: number | string): Look {
  if (SURE.has(question.id) || look.answer.kind === 'cant-tell') return look;
  const next = dice(`${seed}/${question.id}`);
  const at = next();
  if (at < SLIPS) return { ...look, answer: slip(look.answer, question, next) };
  return at < SLIPS + SHRUGS ? { ...look, answer: CANT_TELL } : look;
}

function slip(answer: Answer, question: AskedQuestion, next: () => number): Answer {
  if (answer.kind !== 'value') return answer;
  const { value: given } = answer;
  const { type } = question.answer;
  if (typeof given === 'boolean') return value(!given);
  if (typeof given === 'number') return value(otherNumber(given, question, next));
  if (typeof given !== 'string') return value(otherSeveral(given, question, next));
  if (type === 'choice') return value(otherChoice(given, question, next));
  if (type === 'mask') return value(otherMask(given, next));
  return type === 'text' ? answer : value(oneDigitOff(given, next));
}

/** One digit off is no mask in most cases, and is refused; the line above or below it in a list is one. */
function otherMask(given: string, next: () => number): string {
  const others = ['255.255.0.0', '255.255.254.0', '255.255.255.0', '255.255.255.128', '255.255.255.240'];
  const left = others.filter((mask) => mask !== given);
  return left[Math.floor(next() * left.length)] ?? given;
}

/** A slip ends no call: nobody takes their camera for one on a recorder by a slip of the tongue. */
function otherChoice(given: string, { answer }: AskedQuestion, next: () => number): string {
  const others = (answer.choices ?? []).filter((choice) => choice.id !== given && !('ends' in choice));
  return others[Math.floor(next() * others.length)]?.id ?? given;
}

/** One thing more or one thing less, never both something and nothing. */
function otherSeveral(
  given: readonly string[],
  { answer }: AskedQuestion,
  next: () => number,
): readonly string[] {
  const things = (answer.choices ?? []).map(({ id }) => id).filter((id) => id !== 'none');
  const one = things[Math.floor(next() * things.length)];
  if (one === undefined) return given;
  const rest = given.filter((id) => id !== one && id !== 'none');
  if (!given.includes(one)) return [...rest, one];
  return rest.length > 0 ? rest : ['none'];
}

function otherNumber(given: number, { answer }: AskedQuestion, next: () => number): number {
  const { min = 0, max = 100 } = answer as { readonly min?: number; readonly max?: number };
  const far = next() < 0.5 ? given * 2 : given / 2;
  const whole = Number.isInteger(given) ? Math.round(far) : far;
  const inside = Math.min(max, Math.max(min, whole));
  return inside === given ? (given + 1 <= max ? given + 1 : given - 1) : inside;
}

/** A typed address with one digit off, still numbers from 0 to 255; a date with one digit off stays a date. */
function oneDigitOff(given: string, next: () => number): string {
  const digits = [...given.matchAll(/\d/g)].map(({ index }) => index);
  const start = Math.floor(next() * digits.length);
  const step = 1 + Math.floor(next() * 9);
  for (let turn = 0; turn < digits.length * 9; turn++) {
    const at = digits[(start + turn) % digits.length] ?? 0;
    const digit = (Number(given[at]) + step + Math.floor(turn / digits.length)) % 10;
    const off = `${given.slice(0, at)}${digit}${given.slice(at + 1)}`;
    if (off !== given && isPlausible(off)) return off;
  }
  return given;
}

function isPlausible(typed: string): boolean {
  if (typed.includes(' ')) return isDate(typed);
  const parts = typed.split('.');
  return parts.length === 4 && parts.every((part) => Number(part) <= 255 && !/^0\d/.test(part));
}

function isDate(typed: string): boolean {
  const [, day, year, hour, minute] = /^(\d{2}) \w{3} (\d{4}) (\d{2}):(\d{2})$/.exec(typed) ?? [];
  if (day === undefined || year === undefined || hour === undefined || minute === undefined) return false;
  const whole = Number(day) >= 1 && Number(day) <= 28 && Number(year) >= 1970 && Number(year) < 2100;
  return whole && Number(hour) < 24 && Number(minute) < 60;
}

/** Numbers from 0 up to 1, from a word; mulberry32 over an FNV-1a hash, both in the public domain. */
function dice(word: string): () => number {
  let state = 0x811c9dc5;
  for (const letter of word) state = Math.imul(state ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
