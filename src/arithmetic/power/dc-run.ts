import {
  type Amps,
  type Metres,
  metres,
  type Volts,
  volts,
  type Watts,
  watts,
} from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { awg, mm2, type Wire } from '../../values/units/wire.js';
import type { Judged } from '../judge.js';
import {
  type Cable,
  type CableInputs,
  cableEnds,
  ohmsPerKilometreOf,
  UNKNOWN_SUPPLY_WIRE,
} from './cable-inputs.js';
import { type Ends, hardestOf, isEnough, judgeEnds, kindestOf } from './judge-ends.js';
import type { Load } from './operating-point.js';
import { LEAST_OF_NOMINAL } from './poe-power.js';
import { alongOneCable, type FedCamera, inAStar, type SharedSupply } from './shared-supply.js';

/** What is known of what a camera takes: amps at the supply's volts, or watts. */
export type Draw =
  | { readonly kind: 'amps'; readonly amps: Range<Amps> }
  | { readonly kind: 'watts'; readonly watts: Range<Watts> };

/** Another camera on the same supply. */
export interface Other {
  readonly metres: Range<Metres>;
  readonly draw: Draw;
}

/** Cameras each on a cable of their own, or all along one cable. */
export type Layout = 'star' | 'along';

/** What is known of a camera on a low-voltage supply. `undefined` is not known. */
export interface DcInputs extends CableInputs {
  readonly supplyVolts?: Range<Volts> | undefined;
  /** What the supply can give. */
  readonly rating?: Draw | undefined;
  /** What the camera takes, at one time of day. */
  readonly draw: Draw;
  readonly leastVolts?: Range<Volts> | undefined;
  readonly layout?: Layout | undefined;
  readonly others: readonly Other[];
}

/** One way it may be. */
export interface DcScenario extends Cable {
  readonly supplyVolts: Volts;
  readonly ratingWatts: Watts;
  readonly load: Load;
  readonly leastVolts: Volts;
  readonly others: readonly FedCamera[];
  /** One cable for all carries every current, so it is the harder of the two. */
  readonly layout: Layout;
}

export type DcInput = keyof DcScenario;

/** One way it may be, worked out. */
export interface DcEnd {
  readonly scenario: DcScenario;
  /** The camera that was asked about is the first. Missing where they cannot all be fed. */
  readonly supply: SharedSupply | undefined;
}

export interface DcRun extends Judged<DcInput> {
  readonly best: DcEnd;
  readonly worst: DcEnd;
  /** The longest run to the camera that still works at best and at worst; nought where none does. */
  readonly longestMetres: { readonly best: Metres; readonly worst: Metres };
  /** The thinnest wires on the market that work with everything else at its worst. */
  readonly thinnest: { readonly mm2: Wire | undefined; readonly awg: Wire | undefined };
}

/** Common practice, no source: 12 V and 24 V supplies, from weak to loose. */
export const UNKNOWN_SUPPLY_VOLTS: Range<Volts> = { least: volts(9), most: volts(26) };
/** Common practice, no source: adapters for one camera. */
export const UNKNOWN_RATING_AMPS = { least: 0.5, most: 5 } as const;
/** IEC 60228 sizes, thin to thick, with 0.22 and 0.34 mm² of alarm cable (common practice, no source). */
const METRIC: readonly Wire[] = [0.22, 0.34, 0.5, 0.75, 1, 1.5, 2.5, 4, 6].map(mm2);
const AMERICAN: readonly Wire[] = [26, 24, 22, 20, 18, 16, 14, 12, 10].map(awg);
/** The margin where no current makes it work: less than any other. */
const NO_POINT = -10;
const LONGEST = 2000;

const ASKED = [
  'metres',
  'wire',
  'metal',
  'celsius',
  'supplyVolts',
  'ratingWatts',
  'load',
  'leastVolts',
  'others',
  'layout',
] as const;

/**
 * Whether a camera on a two-wire supply gets what it needs, over the whole range of what is known. Amps are held
 * constant at best (the drop of a resistor, as most worked examples have it); at worst they grow as the volts fall,
 * as they do with a switching supply in the camera.
 */
export function dcRun(given: DcInputs): DcRun {
  const ends = dcEnds(given);
  const [best, worst] = [kindestOf(ends), hardestOf(ends)];
  const thinnest = (sizes: readonly Wire[]): Wire | undefined =>
    sizes.find((wire) => isEnough(marginOf({ ...worst, wire })));
  return {
    ...judgeEnds<DcScenario, DcInput>(ends, marginOf, ASKED),
    best: { scenario: best, supply: solve(best) },
    worst: { scenario: worst, supply: solve(worst) },
    longestMetres: { best: longest(best), worst: longest(worst) },
    thinnest: { mm2: thinnest(METRIC), awg: thinnest(AMERICAN) },
  };
}

function dcEnds(given: DcInputs): Ends<DcScenario> {
  const supply = given.supplyVolts ?? UNKNOWN_SUPPLY_VOLTS;
  const load = loadEnds(given.draw, supply.most);
  return {
    ...cableEnds(given, UNKNOWN_SUPPLY_WIRE),
    supplyVolts: { best: supply.most, worst: supply.least },
    ratingWatts: ratingEnds(given.rating, supply),
    load,
    leastVolts: {
      best: given.leastVolts?.least ?? volts(supply.least * LEAST_OF_NOMINAL.best),
      worst: given.leastVolts?.most ?? volts(supply.most * LEAST_OF_NOMINAL.worst),
    },
    layout: { best: given.layout ?? 'star', worst: given.layout ?? 'along' },
    others: {
      best: given.others.map(({ metres, draw }) => ({
        metres: metres.least,
        load: loadEnds(draw, supply.most).best,
      })),
      worst: given.others.map(({ metres, draw }) => ({
        metres: metres.most,
        load: loadEnds(draw, supply.most).worst,
      })),
    },
  };
}

function loadEnds(draw: Draw, nominal: Volts): Ends<{ load: Load }>['load'] {
  if (draw.kind === 'watts') {
    return {
      best: { kind: 'watts', watts: draw.watts.least },
      worst: { kind: 'watts', watts: draw.watts.most },
    };
  }
  return {
    best: { kind: 'amps', amps: draw.amps.least },
    worst: { kind: 'watts', watts: watts(draw.amps.most * nominal) },
  };
}

function ratingEnds(rating: Draw | undefined, supply: Range<Volts>): Ends<{ rating: Watts }>['rating'] {
  if (rating?.kind === 'watts') return { best: rating.watts.most, worst: rating.watts.least };
  const amps = rating?.amps ?? UNKNOWN_RATING_AMPS;
  return { best: watts(amps.most * supply.most), worst: watts(amps.least * supply.least) };
}

function solve(scenario: DcScenario): SharedSupply | undefined {
  const cameras: readonly FedCamera[] = [
    { metres: scenario.metres, load: scenario.load },
    ...scenario.others,
  ];
  const feed = scenario.layout === 'along' ? alongOneCable : inAStar;
  return feed(scenario.supplyVolts, ohmsPerKilometreOf(scenario), cameras);
}

/** Above nought while every camera has the volts it needs and the supply is not overloaded. */
function marginOf(scenario: DcScenario): number {
  const supply = solve(scenario);
  if (supply === undefined) return NO_POINT;
  const lowest = Math.min(...supply.cameras.map(({ volts }) => volts));
  return Math.min(
    Math.log(lowest / scenario.leastVolts),
    Math.log(scenario.ratingWatts / supply.sourceWatts),
  );
}

/** Halves what is left until it is under a millimetre: the margin falls as the run grows. */
function longest(scenario: DcScenario): Metres {
  let [works, fails] = [0, LONGEST];
  if (isEnough(marginOf({ ...scenario, metres: metres(LONGEST) }))) return metres(LONGEST);
  while (fails - works > 0.001) {
    const middle = (works + fails) / 2;
    if (isEnough(marginOf({ ...scenario, metres: metres(middle) }))) works = middle;
    else fails = middle;
  }
  return metres(works);
}
