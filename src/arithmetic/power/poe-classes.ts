import { type Ohms, ohms, type Volts, volts, type Watts, watts } from '../../values/units/physical.js';

/** One class of power over a network cable: IEEE 802.3 clauses 33 (classes 0 to 4) and 145 (5 to 8). */
export interface PoeClass {
  readonly number: number;
  readonly type: 1 | 2 | 3 | 4;
  /** What the port must be able to give, and the least volts it may have. */
  readonly portWatts: Watts;
  readonly leastPortVolts: Volts;
  /** What the camera may take at its own end, and the least volts it must work with. */
  readonly cameraWatts: Watts;
  readonly leastCameraVolts: Volts;
  /** The longest loop the class is laid out for: 100 m of the poorest cable allowed. */
  readonly mostLoopOhms: Ohms;
  /** Pairs of the cable that carry power. */
  readonly pairs: 2 | 4;
}

/** No port of the standard kind has more. */
export const MOST_PORT_VOLTS: Volts = volts(57);

/**
 * As restated by the Ethernet Alliance overview of 802.3bt, by notes on cable loss (20 and 12.5 ohm) and by a
 * cable tester's manual (least volts of types 3 and 4). 6.25 ohm for four pairs: from memory, and it reproduces
 * the published powers of classes 5 to 8.
 */
const ROWS: readonly (readonly [number, 1 | 2 | 3 | 4, number, number, number, number, number, 2 | 4])[] = [
  // class, type, port W, camera W, port V, camera V, ohm, pairs
  [0, 1, 15.4, 12.95, 44, 37, 20, 2],
  [1, 1, 4, 3.84, 44, 37, 20, 2],
  [2, 1, 7, 6.49, 44, 37, 20, 2],
  [3, 1, 15.4, 12.95, 44, 37, 20, 2],
  [4, 2, 30, 25.5, 50, 42.5, 12.5, 2],
  [5, 3, 45, 40, 50, 42.5, 6.25, 4],
  [6, 3, 60, 51, 50, 42.5, 6.25, 4],
  [7, 4, 75, 62, 52, 41.1, 6.25, 4],
  [8, 4, 90, 71.3, 52, 41.1, 6.25, 4],
];

/** The classes, 0 to 8. */
export const POE_CLASSES: readonly PoeClass[] = ROWS.map(
  ([number, type, portWatts, cameraWatts, portVolts, cameraVolts, loop, pairs]) => ({
    number,
    type,
    portWatts: watts(portWatts),
    leastPortVolts: volts(portVolts),
    cameraWatts: watts(cameraWatts),
    leastCameraVolts: volts(cameraVolts),
    mostLoopOhms: ohms(loop),
    pairs,
  }),
);

/** The class of that number. Throws for anything but 0 to 8. */
export function poeClass(number: number): PoeClass {
  const found = POE_CLASSES[number];
  if (found === undefined) throw new RangeError(`there is no PoE class ${number}`);
  return found;
}

/** The smallest class whose camera may take so much; class 8 where none may. Class 0 is never the answer. */
export function classForCamera(power: Watts): PoeClass {
  return firstThat((one) => one.cameraWatts >= power);
}

/** The smallest class whose port gives so much; class 8 where none does. Class 0 is never the answer. */
export function classForPort(power: Watts): PoeClass {
  return firstThat((one) => one.portWatts >= power);
}

function firstThat(suits: (one: PoeClass) => boolean): PoeClass {
  return POE_CLASSES.find((one) => one.number > 0 && suits(one)) ?? poeClass(8);
}
