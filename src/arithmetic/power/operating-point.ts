import {
  type Amps,
  amps,
  type Ohms,
  ohms,
  type Volts,
  volts,
  type Watts,
  watts,
} from '../../values/units/physical.js';

/** What flows when a supply feeds a device over a cable. */
export interface OperatingPoint {
  readonly amps: Amps;
  readonly dropVolts: Volts;
  readonly deviceVolts: Volts;
  readonly deviceWatts: Watts;
  readonly lossWatts: Watts;
  readonly sourceWatts: Watts;
}

/** What a device takes: the same current at any voltage, or the same power, as a switching supply does. */
export type Load =
  | { readonly kind: 'amps'; readonly amps: Amps }
  | { readonly kind: 'watts'; readonly watts: Watts };

/** The most power that can come through a loop at all: V² / (4 R). */
export function greatestWatts(source: Volts, loop: Ohms): Watts {
  return watts(loop === 0 ? Number.POSITIVE_INFINITY : source ** 2 / (4 * loop));
}

/**
 * The smaller root of R I² − V I + P = 0 for a device that takes constant power, V − R I for one that takes a
 * constant current. `undefined` where there is none: the cable cannot carry it. Circuit theory; IEEE 802.3
 * works its worst cases so.
 */
export function operatingPoint(source: Volts, loop: Ohms, load: Load): OperatingPoint | undefined {
  const current = load.kind === 'amps' ? load.amps : currentFor(source, loop, load.watts);
  if (current === undefined) return undefined;
  const [drop, loss] = [current * loop, current ** 2 * loop];
  const device = source - drop;
  if (device <= 0) return undefined;
  return {
    amps: current,
    dropVolts: volts(drop),
    deviceVolts: volts(device),
    deviceWatts: load.kind === 'watts' ? load.watts : watts(device * current),
    lossWatts: watts(loss),
    sourceWatts: watts(source * current),
  };
}

function currentFor(source: Volts, loop: Ohms, power: Watts): Amps | undefined {
  const underRoot = source ** 2 - 4 * loop * power;
  // This form of the root loses no digits when the loop is short.
  return underRoot < 0 ? undefined : amps((2 * power) / (source + Math.sqrt(underRoot)));
}

/**
 * The greatest loop over which a device taking constant power keeps `leastVolts` and the source gives no more than
 * `mostSourceWatts`. Nought where not even a loop of no resistance would do. The first bound is
 * Vd (V − Vd) / P with Vd no lower than V / 2, the second V² (Ps − P) / Ps²: both follow from the quadratic.
 */
export function greatestLoop(source: Volts, power: Watts, leastVolts: Volts, mostSourceWatts: Watts): Ohms {
  if (leastVolts > source || power > mostSourceWatts) return ohms(0);
  const kept = Math.max(leastVolts, source / 2);
  const byVolts = (kept * (source - kept)) / power;
  // Beyond twice the device's power the source's limit lies past the greatest power the loop lets through.
  if (mostSourceWatts >= 2 * power) return ohms(byVolts);
  return ohms(Math.min(byVolts, (source ** 2 * (mostSourceWatts - power)) / mostSourceWatts ** 2));
}
