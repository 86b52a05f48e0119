import {
  type Celsius,
  type Metres,
  type Ohms,
  type OhmsPerKilometre,
  ohms,
  ohmsPerKilometre,
} from '../../values/units/physical.js';
import { areaOf, type Wire } from '../../values/units/wire.js';

export type Metal = 'copper' | 'copper-clad-aluminium';

/** Annealed copper at 20 °C: 1.724e-8 ohm m, the value behind the usual wire tables (IEC 60028). */
const COPPER_OHM_MM2_PER_KM = 17.24;
/** Of the resistance at 20 °C, for each degree: copper 0.00393; aluminium 0.00403, taken for clad wire too. */
const PER_DEGREE: Readonly<Record<Metal, number>> = { copper: 0.00393, 'copper-clad-aluminium': 0.00403 };
/** ASTM B566, as restated in a wire data sheet: at least 64.4 % (15 % copper) and 62.9 % (10 %) of copper's conductivity. */
const CLAD_CONDUCTIVITY = { least: 0.644, most: 0.629 } as const;
/** NEC chapter 9 table 8, 18 to 10 AWG: stranded wire has up to 2.6 % more resistance than solid. */
const STRANDED = 1.026;
/** IEC 60228, plain copper of classes 5 and 6 at 20 °C: cross-section in mm², most ohm per km. */
const IEC_60228: readonly (readonly [area: number, most: number])[] = [
  [0.5, 39.0],
  [0.75, 26.0],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
  [4, 4.95],
  [6, 3.3],
  [10, 1.91],
  [16, 1.21],
];
/** The largest ratio of the rows above to the resistance of the full cross-section, for sizes between them. */
const FLEXIBLE = Math.max(...IEC_60228.map(([area, most]) => (most * area) / COPPER_OHM_MM2_PER_KM));

/**
 * The resistance of one conductor. Sizes leave it open how much metal there is: `least` is solid wire of the full
 * cross-section, `most` is stranded (AWG) or the highest that IEC 60228 allows a flexible wire (mm²).
 * R(T) = R(20 °C) × (1 + a (T − 20)).
 */
export function conductorOhmsPerKilometre(
  wire: Wire,
  metal: Metal,
  temperature: Celsius,
  spread: 'least' | 'most',
): OhmsPerKilometre {
  const solid = COPPER_OHM_MM2_PER_KM / areaOf(wire);
  const copper = spread === 'least' ? solid : Math.max(solid, mostOhms(wire, solid));
  const atTwenty = metal === 'copper' ? copper : copper / CLAD_CONDUCTIVITY[spread];
  return ohmsPerKilometre(atTwenty * (1 + PER_DEGREE[metal] * (temperature - 20)));
}

/** A wire has no more resistance than the next thinner one of the table may have. */
function mostOhms(wire: Wire, solid: number): number {
  if (wire.system === 'awg') return solid * STRANDED;
  const thinner = IEC_60228.filter(([area]) => area <= wire.area).map(([, most]) => most);
  return Math.min(solid * FLEXIBLE, ...thinner);
}

/** Out and back through two wires: 12 V wiring. */
export function twoWireLoop(perKilometre: OhmsPerKilometre, run: Metres): Ohms {
  return ohms((2 * perKilometre * run) / 1000);
}

/**
 * Out and back through a network cable. With two pairs, two wires side by side carry the current each way, so the
 * loop is what one conductor has; with four pairs it is half of that. Circuit theory.
 */
export function poeLoop(perKilometre: OhmsPerKilometre, run: Metres, pairs: 2 | 4): Ohms {
  return ohms((perKilometre * run * 2) / pairs / 1000);
}
