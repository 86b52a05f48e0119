import { ok, problem, type Result } from '../result.js';
import { quoted, tidy } from '../tidy.js';
import { CROSS_SECTION, GAUGE } from './dimension.js';
import { parseRange } from './parse-range.js';
import { type SquareMillimetres, squareMillimetres } from './physical.js';
import { showRange } from './show-measure.js';

/** The size of one conductor: American gauge (a higher number is thinner) or cross-section. */
export type Wire =
  | { readonly system: 'awg'; readonly gauge: number }
  | { readonly system: 'mm2'; readonly area: SquareMillimetres };

/** What is known of a wire; both the same where it is known exactly. */
export interface WireRange {
  readonly thinnest: Wire;
  readonly thickest: Wire;
}

export const awg = (gauge: number): Wire => ({ system: 'awg', gauge });
export const mm2 = (area: number): Wire => ({ system: 'mm2', area: squareMillimetres(area) });

/**
 * The cross-section of one conductor. A gauge n has the diameter 0.127 mm × 92^((36 − n) / 39): ASTM B258,
 * where 36 AWG is 0.005 in, 0000 is 0.46 in, and 39 equal steps of diameter lie between them.
 */
export function areaOf(wire: Wire): SquareMillimetres {
  if (wire.system === 'mm2') return wire.area;
  const diameterMillimetres = 0.127 * 92 ** ((36 - wire.gauge) / 39);
  return squareMillimetres((Math.PI / 4) * diameterMillimetres ** 2);
}

const GAUGE_WORDS = /\bawg\b|awg(?=\d)|(?<=\d)\s?awg|#|\bgauge\b|(?<=\d)\s?ga\b/gi;
const NUMBER_OF_WIRES = /^\d+\s?[x×*]\s?(?=[\d.,])/i;

/**
 * What a person knows of a wire: `24 AWG`, `AWG24`, `22-24 AWG`, `0.75 mm2`, `2 x 0,75`. Refuses a bare
 * number and a diameter in mm, which are read in two ways, and what no camera is wired with.
 */
export function parseWire(text: string): Result<WireRange> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const gauges = tidied.value.replace(GAUGE_WORDS, ' ');
  if (gauges !== tidied.value) return gaugeRange(gauges);
  const size = tidied.value.replace(NUMBER_OF_WIRES, '');
  if (/\d\s?(?:mm|millimet(?:re|er)s?)$/i.test(size)) {
    return problem({ id: 'measure.wire-diameter', with: { text: quoted(text) } });
  }
  if (!isBare(size)) return areaRange(size);
  // Cables are printed with the number of wires and their size: 2x0.75 can only be mm².
  if (size !== tidied.value) return areaRange(`${size} mm²`);
  return problem({ id: 'measure.wire-bare', with: { text: quoted(text) } });
}

function isBare(size: string): boolean {
  return /\d/.test(size) && !/[\p{L}²"'°%]/u.test(size.replace(/\b(?:to|and)\b/g, ''));
}

function gaugeRange(text: string): Result<WireRange> {
  const parsed = parseRange(text, GAUGE);
  if (!parsed.ok) return parsed;
  return ok({ thinnest: awg(parsed.value.most), thickest: awg(parsed.value.least) });
}

function areaRange(text: string): Result<WireRange> {
  const parsed = parseRange(text, CROSS_SECTION);
  if (!parsed.ok) return parsed;
  const { least, most } = parsed.value;
  return ok({ thinnest: { system: 'mm2', area: least }, thickest: { system: 'mm2', area: most } });
}

/** A wire, or the two it lies between, as it is printed on a cable: `22–24 AWG`, `0.75 mm²`. */
export function showWire({ thinnest, thickest }: WireRange): string {
  if (thickest.system === 'awg' && thinnest.system === 'awg') {
    return `${showRange({ least: thickest.gauge, most: thinnest.gauge })} AWG`;
  }
  return `${showRange({ least: areaOf(thinnest), most: areaOf(thickest) })} mm²`;
}
