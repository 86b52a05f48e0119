declare const unit: unique symbol;

/** A number that knows its unit. Numbers of two units do not stand for each other: watts are not volts. */
export type Measure<U extends string> = number & { readonly [unit]: U };

export type Volts = Measure<'V'>;
export type Amps = Measure<'A'>;
export type Watts = Measure<'W'>;
export type Ohms = Measure<'ohm'>;
export type OhmsPerKilometre = Measure<'ohm/km'>;
export type Metres = Measure<'m'>;
export type SquareMillimetres = Measure<'mm²'>;
export type Celsius = Measure<'°C'>;

/** Marks a number as volts. Throws on what is not a number, as all functions of this file do. */
export const volts = (value: number): Volts => marked(value);
export const amps = (value: number): Amps => marked(value);
export const watts = (value: number): Watts => marked(value);
export const ohms = (value: number): Ohms => marked(value);
export const ohmsPerKilometre = (value: number): OhmsPerKilometre => marked(value);
export const metres = (value: number): Metres => marked(value);
export const squareMillimetres = (value: number): SquareMillimetres => marked(value);
export const celsius = (value: number): Celsius => marked(value);

function marked<T extends number>(value: number): T {
  if (Number.isNaN(value)) throw new RangeError('a measure must be a number');
  return value as T;
}
