import {
  type Amps,
  amps,
  type Celsius,
  celsius,
  type Metres,
  metres,
  type SquareMillimetres,
  squareMillimetres,
  type Volts,
  volts,
  type Watts,
  watts,
} from './physical.js';

/** A unit that may be typed: base value = (typed + offset) × factor. */
interface Accepted {
  readonly name: string;
  readonly factor: number;
  readonly offset?: number;
}

/** A kind of measure: the units it may be typed in, the first meant where none is typed, and its range. */
export interface Dimension<T extends number> {
  readonly units: readonly [Accepted, ...Accepted[]];
  /** The ends of what is possible, in the first unit. */
  readonly least: number;
  readonly most: number;
  readonly of: (value: number) => T;
}

/** The international foot is 0.3048 m exactly (NIST Handbook 44, appendix C). */
const METRES_PER_FOOT = 0.3048;

/** A run of cable, one way: 0.1 m to 2 km. */
export const LENGTH: Dimension<Metres> = {
  units: [
    { name: 'm', factor: 1 },
    { name: 'ft', factor: METRES_PER_FOOT },
    { name: 'km', factor: 1000 },
    { name: 'cm', factor: 0.01 },
    { name: 'in', factor: METRES_PER_FOOT / 12 },
  ],
  least: 0.1,
  most: 2000,
  of: metres,
};

/** Extra-low voltage only, 1 to 60 V: mains is nothing to reckon with here. */
export const EXTRA_LOW_VOLTAGE: Dimension<Volts> = {
  units: [
    { name: 'V', factor: 1 },
    { name: 'mV', factor: 0.001 },
  ],
  least: 1,
  most: 60,
  of: volts,
};

/** The current of a camera or of a supply for cameras: 1 mA to 40 A. */
export const CURRENT: Dimension<Amps> = {
  units: [
    { name: 'A', factor: 1 },
    { name: 'mA', factor: 0.001 },
  ],
  least: 0.001,
  most: 40,
  of: amps,
};

/** The power of one camera or of one port: 0.1 to 200 W. */
export const POWER: Dimension<Watts> = {
  units: [
    { name: 'W', factor: 1 },
    { name: 'kW', factor: 1000 },
  ],
  least: 0.1,
  most: 200,
  of: watts,
};

/** Power that may be none at all, such as what infrared adds: 0 to 100 W. */
export const EXTRA_POWER: Dimension<Watts> = { ...POWER, least: 0, most: 100 };

/** What a whole switch can give: 5 to 5000 W. */
export const SWITCH_POWER: Dimension<Watts> = { ...POWER, least: 5, most: 5000 };

/** A cable where a person can have put one: -60 to 90 °C. */
export const TEMPERATURE: Dimension<Celsius> = {
  units: [
    { name: '°C', factor: 1 },
    { name: '°F', factor: 5 / 9, offset: -32 },
  ],
  least: -60,
  most: 90,
  of: celsius,
};

/** The cross-section of one conductor: 0.05 to 16 mm². */
export const CROSS_SECTION: Dimension<SquareMillimetres> = {
  units: [{ name: 'mm²', factor: 1 }],
  least: 0.05,
  most: 16,
  of: squareMillimetres,
};

/** A wire gauge, American: 6 (thick) to 32 (thin). */
export const GAUGE: Dimension<number> = {
  units: [{ name: 'AWG', factor: 1 }],
  least: 6,
  most: 32,
  of: (value) => value,
};
