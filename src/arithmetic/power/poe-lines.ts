import type { MessageId, Sentence } from '../../messages/say.js';
import { showNumber, showRange } from '../../values/units/show-measure.js';
import { UNKNOWN_DATA_WIRE, UNKNOWN_METRES } from './cable-inputs.js';
import { RUN_CAUTIONS } from './cautions.js';
import { MOST_PORT_VOLTS, type PoeClass, poeClass } from './poe-classes.js';
import type { Pairing } from './poe-kind.js';
import { CLASS_ROUNDING, type PoeEnd, type PoeRun, type PoeRunInput, type PoeRunInputs } from './poe-run.js';
import { closingLines, conductorLines, longestLine, pointLines } from './run-lines.js';

/** TIA-568: a channel is 90 m of fixed cable and 10 m of leads. */
const CHANNEL_METRES = 100;

const PAIRING_LINES: Readonly<Record<Pairing, readonly MessageId[]>> = {
  standard: ['power.kind-standard'],
  passive: ['power.kind-passive', 'power.passive-labels'],
  mixed: ['power.kind-mixed', 'power.passive-stop'],
  'source-unsure': ['power.kind-source-unsure', 'power.passive-if'],
  'camera-unsure': ['power.kind-passive', 'power.kind-camera-unsure', 'power.passive-if'],
  'volts-disagree': ['power.kind-volts-disagree', 'power.passive-if'],
};

const DECIDES: Partial<Readonly<Record<PoeRunInput, MessageId>>> = {
  metres: 'power.decides-length',
  wire: 'power.decides-wire',
  metal: 'power.decides-metal',
  celsius: 'power.decides-temperature',
  sourceVolts: 'power.decides-source-volts',
  cameraWatts: 'power.decides-camera-watts',
  portWatts: 'power.decides-port-watts',
  leastVolts: 'power.decides-least-volts',
  sourceKind: 'power.decides-source-kind',
  camera: 'power.decides-camera-class',
};

/** The run line by line, its cautions last. */
export function poeLines(given: PoeRunInputs, run: PoeRun): readonly Sentence[] {
  const { best, worst } = run;
  const far = (given.metres ?? UNKNOWN_METRES).most > CHANNEL_METRES;
  const pairing: readonly Sentence[] = PAIRING_LINES[run.pairing].map((id) => ({ id }));
  // Kinds that do not go together are no matter of volts: a sum beside that would only mislead.
  if (run.pairing === 'mixed') return [...pairing, ...RUN_CAUTIONS];
  return [
    ...pairing,
    ...(run.classes === undefined ? [] : classLines(given, run.classes.low, run.classes.high)),
    ...conductorLines(given, UNKNOWN_DATA_WIRE, best.scenario, worst.scenario),
    { id: worst.scenario.pairs === 4 ? 'power.loop-four-pairs' : 'power.loop-two-pairs' },
    { id: 'power.end-best' },
    ...endLines(best),
    { id: 'power.end-worst' },
    ...endLines(worst),
    longestLine(worst.longestMetres),
    ...(far ? [{ id: 'power.channel', with: { metres: CHANNEL_METRES } } as const] : []),
    ...closingLines(run.decides && DECIDES[run.decides]),
    ...RUN_CAUTIONS,
  ];
}

function endLines({ scenario, point, loop }: PoeEnd): readonly Sentence[] {
  return pointLines(
    point,
    {
      sourceVolts: scenario.sourceVolts,
      loop,
      load: { kind: 'watts', watts: scenario.cameraWatts },
    },
    { leastVolts: scenario.leastVolts, mostSourceWatts: scenario.portWatts, rounding: CLASS_ROUNDING },
  );
}

function classLines(given: PoeRunInputs, low: PoeClass, high: PoeClass): readonly Sentence[] {
  const numbers = showRange({ least: low.number, most: high.number });
  const unsaid: readonly Sentence[] = [
    given.cameraWatts === undefined
      ? { id: 'power.class-unknown', with: { classes: numbers, watts: showNumber(high.cameraWatts) } }
      : { id: 'power.class-by-watts', with: { classes: numbers, watts: showRange(given.cameraWatts) } },
  ];
  const small = poeClass(3);
  const over = given.cameraWatts !== undefined && given.cameraWatts.least > high.cameraWatts;
  return [
    ...(given.camera === undefined ? unsaid : []),
    ...(low === high ? [classLine(low)] : [classLine(low), classLine(high)]),
    ...(over ? [{ id: 'power.over-class', with: { watts: showNumber(high.cameraWatts) } } as const] : []),
    ...(given.portWatts === undefined && high.number > small.number
      ? [
          {
            id: 'power.port-unknown',
            with: { watts: showNumber(small.portWatts), class: high.number },
          } as const,
        ]
      : []),
    ...(given.portWatts !== undefined && given.portWatts.most < high.portWatts
      ? [
          {
            id: 'power.port-below-class',
            with: {
              watts: showNumber(given.portWatts.most),
              class: high.number,
              needs: showNumber(high.portWatts),
            },
          } as const,
        ]
      : []),
  ];
}

function classLine(one: PoeClass): Sentence {
  return {
    id: 'power.class',
    with: {
      class: one.number,
      type: one.type,
      portWatts: showNumber(one.portWatts),
      portVolts: showRange({ least: one.leastPortVolts, most: MOST_PORT_VOLTS }),
      cameraWatts: showNumber(one.cameraWatts),
      cameraVolts: showNumber(one.leastCameraVolts),
    },
  };
}
