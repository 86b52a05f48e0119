import { type Volts, volts, type Watts, watts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import type { Ends } from './judge-ends.js';
import { classForCamera, classForPort, MOST_PORT_VOLTS, type PoeClass, poeClass } from './poe-classes.js';

/** What feeds the cable and what the camera wants. */
export interface Power {
  readonly sourceVolts: Volts;
  readonly portWatts: Watts;
  readonly cameraWatts: Watts;
  readonly leastVolts: Volts;
  readonly pairs: 2 | 4;
}

/** What is known of it; see the inputs of a run. */
export interface PowerInputs {
  readonly camera?: PoeClass | 'passive' | undefined;
  readonly cameraWatts?: Range<Watts> | undefined;
  readonly portWatts?: Range<Watts> | undefined;
  readonly sourceVolts?: Range<Volts> | undefined;
  readonly leastVolts?: Range<Volts> | undefined;
}

/** Common practice, no source: no network camera takes less. */
const LEAST_CAMERA_WATTS = watts(1);
/** Common practice, no source: what adapters and injectors of the passive kind give. */
const PASSIVE_WATTS: Range<Watts> = { least: watts(5), most: watts(60) };
const PASSIVE_VOLTS: Range<Volts> = { least: volts(9), most: volts(56) };
/** Common practice, no source: labels allow 10 % under the nominal volts, many cameras work with 25 % under. */
export const LEAST_OF_NOMINAL = { best: 0.75, worst: 0.9 } as const;

/** The classes a camera may be: the one that was said, else by its watts, else 1 to 4. */
export function classesOf({ camera, cameraWatts }: PowerInputs): { low: PoeClass; high: PoeClass } {
  if (camera !== undefined && camera !== 'passive') return { low: camera, high: camera };
  if (cameraWatts === undefined) return { low: poeClass(1), high: poeClass(4) };
  return { low: classForCamera(cameraWatts.least), high: classForCamera(cameraWatts.most) };
}

/**
 * Power by IEEE 802.3. A port of which nothing is known gives every class up to 3 its due; above that it may be one
 * of 15.4 W and 44 V.
 */
export function standardEnds(given: PowerInputs): Ends<Power> {
  const { low, high } = classesOf(given);
  const takes = given.cameraWatts ?? { least: LEAST_CAMERA_WATTS, most: high.cameraWatts };
  const small = high.number > poeClass(3).number ? poeClass(3) : high;
  const source = given.portWatts === undefined ? small : classForPort(given.portWatts.least);
  const leasts = [low.leastCameraVolts, high.leastCameraVolts];
  return {
    sourceVolts: {
      best: given.sourceVolts?.most ?? MOST_PORT_VOLTS,
      worst: given.sourceVolts?.least ?? source.leastPortVolts,
    },
    portWatts: {
      best: watts(Math.min(given.portWatts?.most ?? high.portWatts, high.portWatts)),
      worst: watts(Math.min(given.portWatts?.least ?? small.portWatts, high.portWatts)),
    },
    cameraWatts: { best: takes.least, worst: takes.most },
    leastVolts: {
      best: given.leastVolts?.least ?? volts(Math.min(...leasts)),
      worst: given.leastVolts?.most ?? volts(Math.max(...leasts)),
    },
    pairs: { best: high.pairs, worst: low.pairs },
  };
}

/** Power of the passive kind: whatever the labels say, on two pairs. */
export function passiveEnds(given: PowerInputs): Ends<Power> {
  const source = given.sourceVolts ?? PASSIVE_VOLTS;
  const port = given.portWatts ?? PASSIVE_WATTS;
  return {
    sourceVolts: { best: source.most, worst: source.least },
    portWatts: { best: port.most, worst: port.least },
    cameraWatts: {
      best: given.cameraWatts?.least ?? LEAST_CAMERA_WATTS,
      worst: given.cameraWatts?.most ?? poeClass(4).cameraWatts,
    },
    leastVolts: {
      best: given.leastVolts?.least ?? volts(source.least * LEAST_OF_NOMINAL.best),
      worst: given.leastVolts?.most ?? volts(source.most * LEAST_OF_NOMINAL.worst),
    },
    pairs: { best: 2, worst: 2 },
  };
}
