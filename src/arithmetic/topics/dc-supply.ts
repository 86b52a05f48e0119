import { ok, type Result } from '../../values/result.js';
import { EXTRA_LOW_VOLTAGE, LENGTH, TEMPERATURE } from '../../values/units/dimension.js';
import { parseRange } from '../../values/units/parse-range.js';
import { parseWire, showWire, type Wire } from '../../values/units/wire.js';
import { worstOf } from '../judge.js';
import { ohmsPerKilometreOf } from '../power/cable-inputs.js';
import { twoWireLoop } from '../power/conductor.js';
import { dcLines } from '../power/dc-lines.js';
import {
  type DcEnd,
  type DcInput,
  type DcInputs,
  type DcRun,
  type Draw,
  dcRun,
  UNKNOWN_SUPPLY_VOLTS,
} from '../power/dc-run.js';
import { nightFrom, parseDraw, parseOthers, UNKNOWN_DRAW } from '../power/draw.js';
import { needed, optional, orUnknown, parseChoice, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

/** May be left out; nobody need know. */
const maybe = <T>(parse: (text: string) => Result<T>) => optional(orUnknown(parse), undefined);

const READS = {
  'supply-volts': needed(orUnknown((text) => parseRange(text, EXTRA_LOW_VOLTAGE))),
  'supply-rating': maybe(parseDraw),
  length: needed(orUnknown((text) => parseRange(text, LENGTH))),
  day: maybe(parseDraw),
  night: maybe(parseDraw),
  'least-volts': maybe((text) => parseRange(text, EXTRA_LOW_VOLTAGE)),
  wire: maybe(parseWire),
  metal: maybe(parseChoice(['copper', 'copper-clad-aluminium'])),
  temperature: maybe((text) => parseRange(text, TEMPERATURE)),
  layout: maybe(parseChoice(['star', 'along'])),
  others: maybe(parseOthers),
} as const;

const OPTIONS: Partial<Readonly<Record<DcInput, keyof typeof READS>>> = {
  metres: 'length',
  wire: 'wire',
  metal: 'metal',
  celsius: 'temperature',
  supplyVolts: 'supply-volts',
  ratingWatts: 'supply-rating',
  load: 'night',
  leastVolts: 'least-volts',
  others: 'others',
  layout: 'layout',
};

/** Whether a low-voltage supply and its two wires give a camera what it needs, by day and by night. */
export const DC_SUPPLY: Topic = {
  id: 'dc-supply',
  title: 'power.dc-title',
  inputs: [
    { id: 'supply-volts', ask: 'power.ask-supply-volts' },
    { id: 'length', ask: 'power.ask-length' },
    { id: 'day', ask: 'power.ask-day', optional: true },
    { id: 'night', ask: 'power.ask-night', optional: true },
    { id: 'supply-rating', ask: 'power.ask-rating', optional: true },
    { id: 'least-volts', ask: 'power.ask-least-volts', optional: true },
    { id: 'wire', ask: 'power.ask-wire', optional: true },
    {
      id: 'metal',
      ask: 'power.ask-metal',
      optional: true,
      choices: [
        { id: 'copper', title: 'power.copper' },
        { id: 'copper-clad-aluminium', title: 'power.clad' },
      ],
    },
    { id: 'temperature', ask: 'power.ask-temperature', optional: true },
    { id: 'others', ask: 'power.ask-others', optional: true },
    {
      id: 'layout',
      ask: 'power.ask-layout',
      optional: true,
      choices: [
        { id: 'star', title: 'power.layout-star' },
        { id: 'along', title: 'power.layout-along' },
      ],
    },
  ],
  reckon: (given: Given) => {
    const read = readGiven(given, READS);
    if (!read.ok) return read;
    const typed = read.value;
    const inputs = {
      supplyVolts: typed['supply-volts'],
      rating: typed['supply-rating'],
      metres: typed.length,
      leastVolts: typed['least-volts'],
      wire: typed.wire,
      metal: typed.metal,
      celsius: typed.temperature,
      layout: typed.layout,
      others: typed.others ?? [],
    };
    return ok(reckoning(inputs, typed.day, typed.night));
  },
};

function reckoning(
  inputs: Omit<DcInputs, 'draw'>,
  byDay: Draw | undefined,
  byNight: Draw | undefined,
): Reckoning {
  const supply = inputs.supplyVolts ?? UNKNOWN_SUPPLY_VOLTS;
  const draw = byNight ?? (byDay === undefined ? UNKNOWN_DRAW : nightFrom(byDay, supply));
  const drawSaid = byNight !== undefined ? 'night' : byDay !== undefined ? 'day' : 'neither';
  const night = dcRun({ ...inputs, draw });
  const day = byDay && dcRun({ ...inputs, draw: byDay });
  const { verdict, decides } = worstOf(day === undefined ? [night] : [night, day]);
  const option = decides && OPTIONS[decides];
  return {
    verdict,
    ...(option === undefined ? {} : { decides: option }),
    lines: dcLines({ ...inputs, draw }, { day, night, drawSaid }, decides),
    data: {
      day: day === undefined ? null : runData(day),
      night: runData(night),
      longestMetres: night.longestMetres,
      thinnestMetricWire: wireData(night.thinnest.mm2),
      thinnestAmericanWire: wireData(night.thinnest.awg),
    },
  };
}

function runData({ verdict, best, worst }: DcRun): Readonly<Record<string, unknown>> {
  return { verdict, atBest: endData(best), atWorst: endData(worst) };
}

function endData({ scenario, supply }: DcEnd): Readonly<Record<string, unknown>> {
  return {
    cableMetres: scenario.metres,
    loopOhms: twoWireLoop(ohmsPerKilometreOf(scenario), scenario.metres),
    supplyVolts: scenario.supplyVolts,
    ratingWatts: scenario.ratingWatts,
    leastVolts: scenario.leastVolts,
    sourceWatts: supply?.sourceWatts ?? null,
    cameras: supply?.cameras.map(({ volts, amps }) => ({ cameraVolts: volts, amps })) ?? null,
  };
}

function wireData(wire: Wire | undefined): string | null {
  return wire === undefined ? null : showWire({ thinnest: wire, thickest: wire });
}
