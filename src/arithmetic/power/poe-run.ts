import {
  type Metres,
  metres,
  type Ohms,
  type Volts,
  type Watts,
  watts,
} from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import type { Judged } from '../judge.js';
import {
  type Cable,
  type CableInputs,
  cableEnds,
  ohmsPerKilometreOf,
  UNKNOWN_DATA_WIRE,
} from './cable-inputs.js';
import { poeLoop } from './conductor.js';
import { type Ends, hardestOf, judgeEnds, kindestOf } from './judge-ends.js';
import { greatestLoop, type OperatingPoint, operatingPoint } from './operating-point.js';
import type { PoeClass } from './poe-classes.js';
import { type Pairing, type PoeKind, pairing } from './poe-kind.js';
import { classesOf, type Power, passiveEnds, standardEnds } from './poe-power.js';

/** What is known of power over one network cable. `undefined` is not known. */
export interface PoeRunInputs extends CableInputs {
  readonly sourceKind?: PoeKind | undefined;
  /** The class on the camera's label, or passive. */
  readonly camera?: PoeClass | 'passive' | undefined;
  /** What the camera takes at most, infrared on. */
  readonly cameraWatts?: Range<Watts> | undefined;
  /** What the port or injector can give. */
  readonly portWatts?: Range<Watts> | undefined;
  readonly sourceVolts?: Range<Volts> | undefined;
  /** The least volts the camera works with. */
  readonly leastVolts?: Range<Volts> | undefined;
}

/** One way it may be. */
export interface PoeScenario extends Cable, Power {}

/** One way it may be, worked out. `point` is missing where no current makes it work. */
export interface PoeEnd {
  readonly scenario: PoeScenario;
  readonly loop: Ohms;
  readonly point: OperatingPoint | undefined;
  /** The longest run of this cable on which the camera still gets what it needs. */
  readonly longestMetres: Metres;
}

export type PoeRunInput = keyof PoeScenario | 'sourceKind' | 'camera';

export interface PoeRun extends Judged<PoeRunInput> {
  readonly pairing: Pairing;
  /** The classes it may be, smallest and largest; none on a passive supply. */
  readonly classes: { readonly low: PoeClass; readonly high: PoeClass } | undefined;
  readonly best: PoeEnd;
  readonly worst: PoeEnd;
}

/** The class powers are rounded to three figures: by up to 0.2 % (class 5: 50 V, 6.25 ohm, 40 W need 45.08 W). */
export const CLASS_ROUNDING = 1.002;
/** The margin where no current makes it work: less than any other. */
const NO_POINT = -10;

const ASKED = [
  'metres',
  'wire',
  'metal',
  'celsius',
  'sourceVolts',
  'cameraWatts',
  'portWatts',
  'leastVolts',
] as const;

/**
 * Whether a camera fed over its network cable gets what it needs, over the whole range of what is known. Works the
 * quadratic of a device that takes constant power; the bounds are those of IEEE 802.3 clauses 33 and 145.
 */
export function poeRun(given: PoeRunInputs): PoeRun {
  const camera = given.camera === undefined ? undefined : given.camera === 'passive' ? 'passive' : 'standard';
  const pair = pairing(given.sourceKind, camera, given.sourceVolts);
  const passive = pair === 'passive' || pair === 'camera-unsure' || camera === 'passive';
  const ends: Ends<PoeScenario> = {
    ...cableEnds(given, UNKNOWN_DATA_WIRE),
    ...(passive ? passiveEnds(given) : standardEnds(given)),
  };
  return {
    ...withPairing(pair, judgeEnds<PoeScenario, PoeRunInput & keyof PoeScenario>(ends, marginOf, ASKED)),
    pairing: pair,
    classes: passive ? undefined : classesOf(given),
    best: endOf(kindestOf(ends)),
    worst: endOf(hardestOf(ends)),
  };
}

/** Kinds that do not go together outweigh any sum; kinds that may not be so leave nothing fine. */
function withPairing(pair: Pairing, sum: Judged<PoeRunInput>): Judged<PoeRunInput> {
  if (pair === 'mixed') return { verdict: 'impossible' };
  if (pair === 'standard' || pair === 'passive' || sum.verdict === 'impossible') return sum;
  return { verdict: 'doubtful', decides: pair === 'camera-unsure' ? 'camera' : 'sourceKind' };
}

/** Above nought while the camera has the volts it needs and the port the power: the logarithm of the scarcer one. */
function marginOf(scenario: PoeScenario): number {
  const { point } = worked(scenario);
  if (point === undefined) return NO_POINT;
  return Math.min(
    Math.log(point.deviceVolts / scenario.leastVolts),
    Math.log(mostFrom(scenario) / point.sourceWatts),
  );
}

function worked(scenario: PoeScenario): { loop: Ohms; point: OperatingPoint | undefined } {
  const loop = poeLoop(ohmsPerKilometreOf(scenario), scenario.metres, scenario.pairs);
  return {
    loop,
    point: operatingPoint(scenario.sourceVolts, loop, { kind: 'watts', watts: scenario.cameraWatts }),
  };
}

function endOf(scenario: PoeScenario): PoeEnd {
  const ohmsPerMetre = poeLoop(ohmsPerKilometreOf(scenario), metres(1), scenario.pairs);
  const { sourceVolts, cameraWatts, leastVolts } = scenario;
  const most = greatestLoop(sourceVolts, cameraWatts, leastVolts, mostFrom(scenario));
  return { scenario, ...worked(scenario), longestMetres: metres(most / ohmsPerMetre) };
}

function mostFrom({ portWatts }: PoeScenario): Watts {
  return watts(portWatts * CLASS_ROUNDING);
}
