import { type Celsius, celsius, type Metres, metres } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { awg, type Wire, type WireRange } from '../../values/units/wire.js';
import { conductorOhmsPerKilometre, type Metal } from './conductor.js';
import type { Ends } from './judge-ends.js';

/** What is known of a cable. `undefined` is not known: then what is usual in the trade is reckoned with. */
export interface CableInputs {
  readonly metres?: Range<Metres> | undefined;
  readonly wire?: WireRange | undefined;
  readonly metal?: Metal | undefined;
  readonly celsius?: Range<Celsius> | undefined;
}

/** One cable out of all those it may be. */
export interface Cable {
  readonly metres: Metres;
  readonly wire: Wire;
  readonly metal: Metal;
  readonly celsius: Celsius;
  /** Whether the wire has the least or the most resistance that its size allows. */
  readonly spread: 'least' | 'most';
}

/** Common practice, no source: how long a run may be that nobody has measured. */
export const UNKNOWN_METRES: Range<Metres> = { least: metres(1), most: metres(200) };
/** Common practice, no source: a cable under a roof in summer, a wall in winter. */
export const UNKNOWN_CELSIUS: Range<Celsius> = { least: celsius(-20), most: celsius(60) };
/** Common practice, no source: 22 to 26 AWG for network cable, 28 AWG for thin leads. */
export const UNKNOWN_DATA_WIRE: WireRange = { thinnest: awg(28), thickest: awg(22) };
/** Common practice, no source: from bell wire to the cable of a lamp. */
export const UNKNOWN_SUPPLY_WIRE: WireRange = { thinnest: awg(26), thickest: awg(14) };

/** The cable at its kindest and at its hardest: short, thick, of copper and cold; long, thin, clad and warm. */
export function cableEnds(given: CableInputs, usual: WireRange): Ends<Cable> {
  const run = given.metres ?? UNKNOWN_METRES;
  const wire = given.wire ?? usual;
  const temperature = given.celsius ?? UNKNOWN_CELSIUS;
  return {
    metres: { best: run.least, worst: run.most },
    wire: { best: wire.thickest, worst: wire.thinnest },
    metal: { best: given.metal ?? 'copper', worst: given.metal ?? 'copper-clad-aluminium' },
    celsius: { best: temperature.least, worst: temperature.most },
    spread: { best: 'least', worst: 'most' },
  };
}

/** What one conductor of this cable has, in ohm per km. */
export function ohmsPerKilometreOf({
  wire,
  metal,
  celsius,
  spread,
}: Cable): ReturnType<typeof conductorOhmsPerKilometre> {
  return conductorOhmsPerKilometre(wire, metal, celsius, spread);
}
