import type { Sentence } from '../../messages/say.js';
import { ok, type Result } from '../../values/result.js';
import { EXTRA_LOW_VOLTAGE, LENGTH, POWER, TEMPERATURE } from '../../values/units/dimension.js';
import { parseRange } from '../../values/units/parse-range.js';
import { parseWire } from '../../values/units/wire.js';
import { poeClass } from '../power/poe-classes.js';
import { poeLines } from '../power/poe-lines.js';
import { type PoeEnd, type PoeRunInput, type PoeRunInputs, poeRun } from '../power/poe-run.js';
import { needed, optional, orUnknown, parseChoice, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

const CLASSES = ['0', '1', '2', '3', '4', '5', '6', '7', '8', 'passive'] as const;

/** May be left out; nobody need know. */
const maybe = <T>(parse: (text: string) => Result<T>) => optional(orUnknown(parse), undefined);

const READS = {
  length: needed(orUnknown((text) => parseRange(text, LENGTH))),
  'camera-class': maybe(parseChoice(CLASSES)),
  'camera-watts': maybe((text) => parseRange(text, POWER)),
  'source-kind': maybe(parseChoice(['standard', 'passive'])),
  'source-volts': maybe((text) => parseRange(text, EXTRA_LOW_VOLTAGE)),
  'port-watts': maybe((text) => parseRange(text, POWER)),
  'least-volts': maybe((text) => parseRange(text, EXTRA_LOW_VOLTAGE)),
  wire: maybe(parseWire),
  metal: maybe(parseChoice(['copper', 'copper-clad-aluminium'])),
  temperature: maybe((text) => parseRange(text, TEMPERATURE)),
} as const;

/** Which option stands for which input of the sum. */
const OPTIONS: Partial<Readonly<Record<PoeRunInput, keyof typeof READS>>> = {
  metres: 'length',
  wire: 'wire',
  metal: 'metal',
  celsius: 'temperature',
  sourceVolts: 'source-volts',
  cameraWatts: 'camera-watts',
  portWatts: 'port-watts',
  leastVolts: 'least-volts',
  sourceKind: 'source-kind',
  camera: 'camera-class',
};

/** Whether a camera fed over its network cable gets what it needs: IEEE 802.3 clauses 33 and 145, or passive. */
export const POE: Topic = {
  id: 'poe',
  title: 'power.poe-title',
  inputs: [
    { id: 'length', ask: 'power.ask-length' },
    {
      id: 'camera-class',
      ask: 'power.ask-camera-class',
      optional: true,
      choices: [
        { id: '0', title: 'power.class-0' },
        { id: '1', title: 'power.class-1' },
        { id: '2', title: 'power.class-2' },
        { id: '3', title: 'power.class-3' },
        { id: '4', title: 'power.class-4' },
        { id: '5', title: 'power.class-5' },
        { id: '6', title: 'power.class-6' },
        { id: '7', title: 'power.class-7' },
        { id: '8', title: 'power.class-8' },
        { id: 'passive', title: 'power.passive' },
      ],
    },
    { id: 'camera-watts', ask: 'power.ask-camera-watts', optional: true },
    {
      id: 'source-kind',
      ask: 'power.ask-source-kind',
      optional: true,
      choices: [
        { id: 'standard', title: 'power.standard' },
        { id: 'passive', title: 'power.passive' },
      ],
    },
    { id: 'source-volts', ask: 'power.ask-source-volts', optional: true },
    { id: 'port-watts', ask: 'power.ask-port-watts', optional: true },
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
  ],
  reckon: (given: Given) => {
    const read = readGiven(given, READS);
    if (!read.ok) return read;
    const typed = read.value;
    const camera = typed['camera-class'];
    const inputs: PoeRunInputs = {
      metres: typed.length,
      camera: camera === undefined || camera === 'passive' ? camera : poeClass(Number(camera)),
      cameraWatts: typed['camera-watts'],
      sourceKind: typed['source-kind'],
      sourceVolts: typed['source-volts'],
      portWatts: typed['port-watts'],
      leastVolts: typed['least-volts'],
      wire: typed.wire,
      metal: typed.metal,
      celsius: typed.temperature,
    };
    return ok(reckoning(inputs));
  },
};

function reckoning(inputs: PoeRunInputs): Reckoning {
  const run = poeRun(inputs);
  const option = run.decides && OPTIONS[run.decides];
  const lines: readonly Sentence[] = poeLines(inputs, run);
  return {
    verdict: run.verdict,
    ...(option === undefined ? {} : { decides: option }),
    lines,
    data: { pairing: run.pairing, atBest: endData(run.best), atWorst: endData(run.worst) },
  };
}

function endData({ scenario, loop, point, longestMetres }: PoeEnd): Readonly<Record<string, unknown>> {
  return {
    cableMetres: scenario.metres,
    loopOhms: loop,
    sourceVolts: scenario.sourceVolts,
    cameraWatts: scenario.cameraWatts,
    leastVolts: scenario.leastVolts,
    portWatts: scenario.portWatts,
    amps: point?.amps ?? null,
    dropVolts: point?.dropVolts ?? null,
    cameraVolts: point?.deviceVolts ?? null,
    lossWatts: point?.lossWatts ?? null,
    sourceWatts: point?.sourceWatts ?? null,
    longestMetres,
  };
}
