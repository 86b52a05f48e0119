import type { Sentence } from '../messages/say.js';
import { readings } from './digits.js';
import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';
import { isSameUnit } from './units.js';

/** Sign, digits and what follows them. */
const NUMBER_AND_UNIT = /^([+\-−–]?) ?([.,]?\d(?:[\d., ]*\d)?) ?([^\d., ].*)?$/u;

/**
 * The number a person typed, `min` to `max` (both allowed), in `unit`; typing the unit is optional.
 * A comma may stand for the point. Refuses another unit, naming both, and a number outside the range,
 * naming the range. `unit` is `''` for a bare count.
 */
export function parseNumber(text: string, unit: string, min: number, max: number): Result<number> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const range = { text: quoted(tidied.value), unit, min, max };
  const [, sign = '', digits = '', typed = ''] = NUMBER_AND_UNIT.exec(withoutEnds(tidied.value)) ?? [];
  const found = readings(digits).map((size) => (sign === '' || sign === '+' ? size : 0 - size));
  if (found.length === 0 || /^[-−–:/]/u.test(typed)) return problem(unclear(range));
  if (typed !== '' && !isSameUnit(typed, unit)) return problem(otherUnit(range, quoted(typed)));
  const [one, other] = found.filter((value) => value >= min && value <= max);
  if (one === undefined) return problem(outside(range));
  return other === undefined ? ok(one) : problem(twoReadings(range.text, one, other));
}

/** The unit a person typed after one number, as typed; `''` where there is none or no number was read. */
export function typedUnit(text: string): string {
  const tidied = tidy(text);
  return tidied.ok ? (NUMBER_AND_UNIT.exec(withoutEnds(tidied.value))?.[3] ?? '') : '';
}

interface Range {
  readonly text: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

/** Quotes go only in pairs: one alone at the end is a sign for feet or inches. */
function withoutEnds(text: string): string {
  return (/^(["'`])(.*)\1$|^[“‘«](.*)[”’»]$/u.exec(text)?.slice(2).join('') ?? text)
    .replace(/[., ;]+$/, '')
    .trim();
}

function unclear(range: Range): Sentence {
  return {
    id: range.unit === '' ? 'typed.number-unclear-plain' : 'typed.number-unclear',
    with: { ...range },
  };
}

function outside(range: Range): Sentence {
  return {
    id: range.unit === '' ? 'typed.number-outside-plain' : 'typed.number-outside',
    with: { ...range },
  };
}

function otherUnit(range: Range, typed: string): Sentence {
  return { id: range.unit === '' ? 'typed.unit-needless' : 'typed.unit-other', with: { ...range, typed } };
}

function twoReadings(text: string, decimal: number, whole: number): Sentence {
  // Three decimals would be read in two ways again; a nought more or less settles it.
  const shown = /\.\d{3}$/.test(String(decimal)) ? `${decimal}0` : String(decimal);
  const small = shown.includes('.') ? shown : `${shown}.0`;
  return { id: 'typed.number-two-readings', with: { text, whole, small } };
}
