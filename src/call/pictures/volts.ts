import { say } from '../../messages/say.js';
import { rounded } from '../../values/rounded.js';
import { numberWithin, within } from './within.js';

/** One way it may be: volts at the source, and at the camera where it runs at all. */
export interface VoltsEnd {
  readonly source: number;
  readonly camera: number | undefined;
  readonly least: number;
}

/** How the volts fall along a cable, at best and at worst. */
export interface Volts {
  readonly kind: 'volts';
  readonly metres: number;
  readonly best: VoltsEnd;
  readonly worst: VoltsEnd;
  /** Volts at the top and at the foot of the drawing. */
  readonly top: number;
  readonly foot: number;
  readonly says: string;
}

/** The volts along the cable of a sum about power; at night, where day and night differ. */
export function cableVolts(data: unknown): Volts | undefined {
  const run = within(data, 'night') ?? data;
  const [best, worst] = [endOf(within(run, 'atBest')), endOf(within(run, 'atWorst'))];
  const metres = numberWithin(run, 'atWorst', 'cableMetres');
  // Where others hang on the same cable, the volts do not fall evenly.
  if (['atBest', 'atWorst'].some((end) => within(run, end, 'cameras', 1) !== undefined)) return undefined;
  if (!best || !worst || metres === undefined) return undefined;
  const all = [best, worst].flatMap(({ source, camera, least }) => [source, camera ?? least, least]);
  const top = Math.max(...all);
  const foot = Math.max(0, Math.min(...all) - (top - Math.min(...all)) * 0.25);
  return { kind: 'volts', metres, best, worst, top, foot, says: words(best, worst, metres) };
}

function endOf(end: unknown): VoltsEnd | undefined {
  const source = numberWithin(end, 'supplyVolts') ?? numberWithin(end, 'sourceVolts');
  const least = numberWithin(end, 'leastVolts');
  if (source === undefined || least === undefined) return undefined;
  const camera = numberWithin(end, 'cameraVolts') ?? numberWithin(end, 'cameras', 0, 'cameraVolts');
  return { source, camera, least };
}

function words(best: VoltsEnd, worst: VoltsEnd, metres: number): string {
  return say('picture.volts-says', {
    metres: rounded(metres),
    bestFrom: rounded(best.source),
    bestTo: voltsWords(best.camera),
    worstFrom: rounded(worst.source),
    worstTo: voltsWords(worst.camera),
    least: leastWords(best, worst),
  });
}

/** Volts at a camera in words. */
export function voltsWords(volts: number | undefined): string {
  return volts === undefined
    ? say('picture.volts-none')
    : say('picture.volts-value', { volts: rounded(volts) });
}

/** What the camera needs, one number or a range. */
export function leastWords({ least: one }: VoltsEnd, { least: other }: VoltsEnd): string {
  return one === other ? rounded(one) : `${rounded(one)}–${rounded(other)}`;
}
