import { parseNumber } from './quantity.js';
import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';
import { isSameUnit } from './units.js';

/** A unit that may be typed, its size in the base unit, and spoken ways to write it. */
export interface MeasureUnit {
  readonly unit: string;
  readonly size: number;
  readonly also?: readonly string[];
}

/** What one kind of amount may be typed in; `min` and `max` (both allowed) are in the base unit. */
export interface Measure {
  readonly units: readonly MeasureUnit[];
  /** The unit meant where none is typed. Without it a unit must be typed. */
  readonly bare?: string;
  readonly min: number;
  readonly max: number;
  /** An amount as it should be typed. */
  readonly example: string;
}

const NUMBER_THEN_UNIT = /^(.*?\d[.,]?) ?([^\d., ][^\d]*)?$/u;

/**
 * The amount a person typed, in the base unit of its measure. Refuses a unit of another kind and an
 * amount outside the measure, naming the range in the unit that was typed.
 */
export function parseMeasure(text: string, measure: Measure): Result<number> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const [, digits = tidied.value, typed = ''] = NUMBER_THEN_UNIT.exec(tidied.value) ?? [];
  const unit = unitOf(typed, measure);
  const said = { text: quoted(tidied.value), example: measure.example };
  if (unit === undefined) {
    if (typed !== '') {
      return problem({ id: 'amount.unit-unknown', with: { ...said, typed: quoted(typed) } });
    }
    // Nought is nought in every unit.
    return /^0*[.,]?0+$/.test(digits) && measure.min === 0
      ? ok(0)
      : problem({ id: 'amount.unit-missing', with: said });
  }
  const number = parseNumber(digits, unit.unit, measure.min / unit.size, measure.max / unit.size);
  return number.ok ? ok(number.value * unit.size) : number;
}

function unitOf(typed: string, measure: Measure): MeasureUnit | undefined {
  if (typed === '') return measure.units.find(({ unit }) => unit === measure.bare);
  const spoken = typed.toLowerCase();
  return (
    measure.units.find(({ also }) => also?.includes(typed) || also?.includes(spoken)) ??
    measure.units.find(({ unit }) => unit !== '' && isSameUnit(typed, unit))
  );
}

/** A whole number from `min` to `max`, both allowed. */
export function parseCount(text: string, min: number, max: number): Result<number> {
  const number = parseNumber(text, '', min, max);
  if (!number.ok || Number.isInteger(number.value)) return number;
  return problem({ id: 'amount.not-whole', with: { text: quoted(text), min, max } });
}
