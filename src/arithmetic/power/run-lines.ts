import type { MessageId, Sentence } from '../../messages/say.js';
import type { Metres, Ohms, Volts, Watts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { showNumber, showRange } from '../../values/units/show-measure.js';
import { showWire, type WireRange } from '../../values/units/wire.js';
import {
  type Cable,
  type CableInputs,
  ohmsPerKilometreOf,
  UNKNOWN_CELSIUS,
  UNKNOWN_METRES,
} from './cable-inputs.js';
import { greatestWatts, type Load, type OperatingPoint } from './operating-point.js';

/** What one conductor has, with the source of each constant, and what had to be taken as usual. */
export function conductorLines(
  given: CableInputs,
  usual: WireRange,
  best: Cable,
  worst: Cable,
): readonly Sentence[] {
  const ohms: Range<number> = { least: ohmsPerKilometreOf(best), most: ohmsPerKilometreOf(worst) };
  const said = {
    metres: showRange(given.metres ?? UNKNOWN_METRES),
    wire: showWire(given.wire ?? usual),
    celsius: showRange(given.celsius ?? UNKNOWN_CELSIUS),
    ohms: showRange(ohms),
  };
  return [
    ...(given.metres === undefined ? [{ id: 'power.length-unknown', with: said } as const] : []),
    ...(given.wire === undefined ? [{ id: 'power.wire-unknown', with: said } as const] : []),
    ...(given.celsius === undefined ? [{ id: 'power.temperature-unknown', with: said } as const] : []),
    { id: metalLine(given) },
    { id: 'power.conductor', with: said },
    { id: (given.wire ?? usual).thinnest.system === 'awg' ? 'power.size-gauge' : 'power.size-metric' },
  ];
}

function metalLine({ metal }: CableInputs): MessageId {
  if (metal === undefined) return 'power.metal-unknown';
  return metal === 'copper' ? 'power.metal-copper' : 'power.metal-clad';
}

/**
 * What one end of the ranges comes to: current, drop, what arrives, and how far it is from the least. `rounding`
 * is what the source's figure may be exceeded by because it was published rounded; 1 for nothing.
 */
export function pointLines(
  point: OperatingPoint | undefined,
  from: { readonly sourceVolts: Volts; readonly loop: Ohms; readonly load: Load },
  needs: { readonly leastVolts: Volts; readonly mostSourceWatts: Watts; readonly rounding: number },
): readonly Sentence[] {
  if (point === undefined) return [noPointLine(from)];
  const above = point.deviceVolts - needs.leastVolts;
  const over = point.sourceWatts - needs.mostSourceWatts * needs.rounding;
  return [
    {
      id: from.load.kind === 'watts' ? 'power.point-watts' : 'power.point-amps',
      with: {
        sourceVolts: showNumber(from.sourceVolts),
        ohms: showNumber(from.loop),
        amps: showNumber(point.amps),
        drop: showNumber(point.dropVolts),
        loss: showNumber(point.lossWatts),
        volts: showNumber(point.deviceVolts),
        watts: showNumber(point.deviceWatts),
      },
    },
    {
      id: above >= 0 ? 'power.volts-above' : 'power.volts-below',
      with: { volts: showNumber(Math.abs(above)), least: showNumber(needs.leastVolts) },
    },
    {
      id: over <= 0 ? 'power.source-enough' : 'power.source-over',
      with: { watts: showNumber(point.sourceWatts), most: showNumber(needs.mostSourceWatts) },
    },
  ];
}

function noPointLine(from: {
  readonly sourceVolts: Volts;
  readonly loop: Ohms;
  readonly load: Load;
}): Sentence {
  const said = { sourceVolts: showNumber(from.sourceVolts), ohms: showNumber(from.loop) };
  if (from.load.kind === 'amps') {
    return { id: 'power.no-point-amps', with: { ...said, amps: showNumber(from.load.amps) } };
  }
  const most = showNumber(greatestWatts(from.sourceVolts, from.loop));
  return { id: 'power.no-point-watts', with: { ...said, most, watts: showNumber(from.load.watts) } };
}

/** The longest run with all else at its worst. The best end rests on the smallest camera: it would only mislead. */
export function longestLine(worst: Metres): Sentence {
  if (worst < 1) return { id: 'power.longest-none' };
  return { id: 'power.longest', with: { metres: showNumber(Math.floor(worst)) } };
}

/** What would decide it, and that it proves nothing. */
export function closingLines(decides: MessageId | undefined): readonly Sentence[] {
  return [...(decides === undefined ? [] : [{ id: decides }]), { id: 'power.estimate' }];
}
