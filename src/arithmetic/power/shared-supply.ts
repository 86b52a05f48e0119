import {
  type Metres,
  type OhmsPerKilometre,
  type Volts,
  volts,
  type Watts,
  watts,
} from '../../values/units/physical.js';
import { twoWireLoop } from './conductor.js';
import { type Load, type OperatingPoint, operatingPoint } from './operating-point.js';

/** A camera on a supply and the length of cable to it, one way, from the supply. */
export interface FedCamera {
  readonly metres: Metres;
  readonly load: Load;
}

/** What each camera gets, in the order given, and what the supply gives to all. */
export interface SharedSupply {
  readonly cameras: readonly { readonly volts: Volts; readonly amps: number }[];
  readonly sourceWatts: Watts;
}

const SETTLED_VOLTS = 1e-10;
const MOST_ROUNDS = 20_000;

/** Cameras each on a cable of their own to one supply of fixed volts. `undefined` where one of them cannot be fed. */
export function inAStar(
  source: Volts,
  perKilometre: OhmsPerKilometre,
  cameras: readonly FedCamera[],
): SharedSupply | undefined {
  const points = cameras.map(({ metres, load }) =>
    operatingPoint(source, twoWireLoop(perKilometre, metres), load),
  );
  const fed = points.filter((point): point is OperatingPoint => point !== undefined);
  if (fed.length < points.length) return undefined;
  return {
    cameras: fed.map((point) => ({ volts: point.deviceVolts, amps: point.amps })),
    sourceWatts: watts(fed.reduce((sum, point) => sum + point.sourceWatts, 0)),
  };
}

/**
 * Cameras along one cable: every piece carries the current of all that hang behind it. Starts at full volts and
 * lets the volts sink, round by round, to where currents and drops agree: the highest volts that do (Kirchhoff).
 * `undefined` where they agree nowhere, or where it is so close to that that no camera would stay on.
 */
export function alongOneCable(
  source: Volts,
  perKilometre: OhmsPerKilometre,
  cameras: readonly FedCamera[],
): SharedSupply | undefined {
  let held: readonly number[] = cameras.map(() => source);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const currents = cameras.map(({ load }, index) =>
      load.kind === 'amps' ? load.amps : load.watts / (held[index] ?? source),
    );
    const next = voltsAlong(source, perKilometre, cameras, currents);
    if (next.some((value) => value <= 0)) return undefined;
    const moved = Math.max(0, ...next.map((value, index) => Math.abs(value - (held[index] ?? source))));
    held = next;
    if (moved < SETTLED_VOLTS) return settled(source, held, currents);
  }
  return undefined;
}

function voltsAlong(
  source: Volts,
  perKilometre: OhmsPerKilometre,
  cameras: readonly FedCamera[],
  currents: readonly number[],
): readonly number[] {
  return cameras.map(({ metres: here }) => {
    // The current of a camera flows through the cable that it shares with this one.
    const drop = cameras.reduce((sum, other, index) => {
      const shared = Math.min(here, other.metres) as Metres;
      return sum + twoWireLoop(perKilometre, shared) * (currents[index] ?? 0);
    }, 0);
    return source - drop;
  });
}

function settled(source: Volts, held: readonly number[], currents: readonly number[]): SharedSupply {
  return {
    cameras: held.map((value, index) => ({ volts: volts(value), amps: currents[index] ?? 0 })),
    sourceWatts: watts(source * currents.reduce((sum, current) => sum + current, 0)),
  };
}
