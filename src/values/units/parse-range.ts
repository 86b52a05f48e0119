import { parseNumber, typedUnit } from '../quantity.js';
import { ok, type Result } from '../result.js';
import { isSameUnit } from '../units.js';
import type { Dimension } from './dimension.js';
import { between, exactly, type Range } from './range.js';
import { type TypedRange, typedRange } from './typed-range.js';

/**
 * What a person knows of a measure, in the first unit of its dimension: one value or a range, in any unit of
 * the dimension (`330 ft`, `0,5 A`, `60-90 m`). Refuses other units and what is impossible, naming the range.
 */
export function parseRange<T extends number>(text: string, dimension: Dimension<T>): Result<Range<T>> {
  const parts = typedRange(text);
  return parts.ok ? ofParts(parts.value, dimension) : parts;
}

function ofParts<T extends number>(parts: TypedRange, dimension: Dimension<T>): Result<Range<T>> {
  switch (parts.kind) {
    case 'one':
      return mapped(parseOne(parts.text, dimension), exactly);
    case 'at-most':
      return mapped(parseOne(parts.text, dimension), (most) => between(dimension.of(dimension.least), most));
    case 'at-least':
      return mapped(parseOne(parts.text, dimension), (least) => between(least, dimension.of(dimension.most)));
    case 'two':
      return pair(parts.from, parts.to, dimension, between);
    case 'give-or-take':
      // A way off may be smaller than any allowed value; only the ends have to be possible.
      return pair(parts.middle, parts.off, dimension, (middle, off) => around(middle, off, dimension), 0);
  }
}

function around<T extends number>(middle: T, off: T, dimension: Dimension<T>): Range<T> {
  const { least, most, of } = dimension;
  return { least: of(Math.max(least, middle - off)), most: of(Math.min(most, middle + off)) };
}

function pair<T extends number>(
  first: string,
  second: string,
  dimension: Dimension<T>,
  combine: (one: T, other: T) => Range<T>,
  least: number = dimension.least,
): Result<Range<T>> {
  const unit = typedUnit(second);
  const one = parseOne(typedUnit(first) === '' ? `${first} ${unit}` : first, dimension);
  if (!one.ok) return one;
  return mapped(parseOne(second, { ...dimension, least }), (other) => combine(one.value, other));
}

function parseOne<T extends number>(text: string, dimension: Dimension<T>): Result<T> {
  const typed = typedUnit(text);
  const unit = dimension.units.find(({ name }) => isSameUnit(typed, name)) ?? dimension.units[0];
  const inUnit = (base: number): number => base / unit.factor - (unit.offset ?? 0);
  const most = Math.floor(tidyNumber(inUnit(dimension.most) * 100)) / 100;
  const least = Math.ceil(tidyNumber(inUnit(dimension.least) * 100)) / 100;
  return mapped(parseNumber(text, unit.name, least, most), (value) =>
    dimension.of(tidyNumber((value + (unit.offset ?? 0)) * unit.factor)),
  );
}

/** Without the last digits of a double: 350 mA are 0.35 A, not 0.35000000000000003. */
function tidyNumber(value: number): number {
  return Number(value.toPrecision(12));
}

function mapped<A, B>(result: Result<A>, change: (value: A) => B): Result<B> {
  return result.ok ? ok(change(result.value)) : result;
}
