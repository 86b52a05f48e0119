import type { MessageId, Sentence } from '../../messages/say.js';
import { showNumber } from '../../values/units/show-measure.js';
import { showWire, type Wire } from '../../values/units/wire.js';
import { ohmsPerKilometreOf, UNKNOWN_SUPPLY_WIRE } from './cable-inputs.js';
import { RUN_CAUTIONS } from './cautions.js';
import { twoWireLoop } from './conductor.js';
import type { DcEnd, DcInput, DcInputs, DcRun } from './dc-run.js';
import { operatingPoint } from './operating-point.js';
import { closingLines, conductorLines, longestLine, pointLines } from './run-lines.js';

const DECIDES: Partial<Readonly<Record<DcInput, MessageId>>> = {
  metres: 'power.decides-length',
  wire: 'power.decides-wire',
  metal: 'power.decides-metal',
  celsius: 'power.decides-temperature',
  supplyVolts: 'power.decides-supply-volts',
  ratingWatts: 'power.decides-rating',
  load: 'power.decides-draw',
  leastVolts: 'power.decides-least-volts',
  others: 'power.decides-others',
  layout: 'power.decides-layout',
};

/** The sums of a day and a night. `day` is missing where only the night's current is known. */
export interface DayAndNight {
  readonly day: DcRun | undefined;
  readonly night: DcRun;
  /** Which was said: the night's, only the day's, or neither. */
  readonly drawSaid: 'night' | 'day' | 'neither';
}

/** The supply line by line, by day and by night, its cautions last. */
export function dcLines(
  given: DcInputs,
  { day, night, drawSaid }: DayAndNight,
  decides: DcInput | undefined,
): readonly Sentence[] {
  const dusk = day?.verdict === 'fine' && night.verdict !== 'fine';
  return [
    ...unknownLines(given),
    ...(drawSaid === 'night'
      ? []
      : [{ id: drawSaid === 'day' ? 'power.night-draw-unknown' : 'power.draw-unknown' } as const]),
    ...conductorLines(given, UNKNOWN_SUPPLY_WIRE, night.best.scenario, night.worst.scenario),
    { id: 'power.loop-two-wires' },
    ...(given.others.length > 0 ? [{ id: layoutLine(given) }] : []),
    ...(day === undefined ? [] : [{ id: 'power.by-day' } as const, ...runLines(day)]),
    { id: 'power.by-night' },
    ...runLines(night),
    longestLine(night.longestMetres.worst),
    ...(given.others.length === 0 ? [] : [{ id: 'power.longest-shared' } as const]),
    ...thinnestLines(night),
    ...(dusk ? [{ id: 'power.dusk' } as const] : []),
    ...closingLines(decides && DECIDES[decides]),
    ...RUN_CAUTIONS,
  ];
}

function layoutLine({ layout }: DcInputs): MessageId {
  if (layout === undefined) return 'power.layout-unknown';
  return layout === 'along' ? 'power.along' : 'power.star';
}

function unknownLines(given: DcInputs): readonly Sentence[] {
  return [
    ...(given.supplyVolts === undefined ? [{ id: 'power.supply-volts-unknown' } as const] : []),
    ...(given.rating === undefined ? [{ id: 'power.rating-unknown' } as const] : []),
    ...(given.leastVolts === undefined ? [{ id: 'power.least-volts-unknown' } as const] : []),
  ];
}

function runLines({ best, worst }: DcRun): readonly Sentence[] {
  return [{ id: 'power.end-best' }, ...endLines(best), { id: 'power.end-worst' }, ...endLines(worst)];
}

function endLines({ scenario, supply }: DcEnd): readonly Sentence[] {
  const loop = twoWireLoop(ohmsPerKilometreOf(scenario), scenario.metres);
  const from = { sourceVolts: scenario.supplyVolts, loop, load: scenario.load };
  const needs = { leastVolts: scenario.leastVolts, mostSourceWatts: scenario.ratingWatts, rounding: 1 };
  if (scenario.others.length === 0) {
    return pointLines(operatingPoint(scenario.supplyVolts, loop, scenario.load), from, needs);
  }
  if (supply === undefined) return [{ id: 'power.shared-none', with: { count: scenario.others.length + 1 } }];
  return [
    ...supply.cameras.map(({ volts, amps }, index): Sentence => {
      const { metres } = scenario.others[index - 1] ?? scenario;
      return {
        id: volts >= scenario.leastVolts ? 'power.shared-enough' : 'power.shared-short',
        with: {
          metres: showNumber(metres),
          amps: showNumber(amps),
          volts: showNumber(volts),
          least: showNumber(scenario.leastVolts),
        },
      };
    }),
    {
      id: supply.sourceWatts <= scenario.ratingWatts ? 'power.source-enough' : 'power.source-over',
      with: { watts: showNumber(supply.sourceWatts), most: showNumber(scenario.ratingWatts) },
    },
  ];
}

function thinnestLines({ thinnest }: DcRun): readonly Sentence[] {
  if (thinnest.mm2 === undefined || thinnest.awg === undefined) return [{ id: 'power.thinnest-none' }];
  return [
    { id: 'power.thinnest', with: { metric: showSize(thinnest.mm2), american: showSize(thinnest.awg) } },
  ];
}

function showSize(wire: Wire): string {
  return showWire({ thinnest: wire, thickest: wire });
}
