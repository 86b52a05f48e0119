import type { Calibration } from './calls/calibration.js';
import type { Row } from './calls/rows.js';

/** What is drawn: minutes by policy, and how often verdicts given with so much were right. */
export interface Drawn {
  readonly minutes: { readonly clean: readonly Row[]; readonly noisy: readonly Row[] };
  readonly calibration: { readonly clean: Calibration; readonly noisy: Calibration };
}

const WIDTH = 720;
const LABEL = 190;
const BAR = 12;
const GAP = 8;
const CURVE = 220;
const INK = '#222';
const DARK = '#1f5f8b';
const LIGHT = '#9cc3dd';

/** The picture of a bench run as SVG: bars and a curve, each told by words and shape besides its shade. */
export function pictureOf({ minutes, calibration }: Drawn): string {
  const most = Math.max(...[...minutes.clean, ...minutes.noisy].map((row) => row.minutes));
  const scale = (value: number): number => (value / most) * (WIDTH - LABEL - 70);
  const bars = minutes.clean.flatMap((row, at) => {
    const y = 50 + at * (2 * BAR + GAP);
    const noisy = minutes.noisy.find(({ policy }) => policy === row.policy);
    return [
      text(LABEL - 10, y + BAR + 4, row.policy, 'end'),
      bar(y, scale(row.minutes), DARK, row.minutes),
      ...(noisy ? [bar(y + BAR, scale(noisy.minutes), LIGHT, noisy.minutes)] : []),
    ];
  });
  const under = 50 + minutes.clean.length * (2 * BAR + GAP) + 50;
  const height = under + CURVE + 60;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" font-family="sans-serif" font-size="12">`,
    '<title>Minutes by policy, and how far verdicts can be trusted</title>',
    `<rect width="${WIDTH}" height="${height}" fill="#fff"/>`,
    text(
      20,
      24,
      'Minutes until the picture is back, a visit counted as 210. Upper bar: all answers right. Lower: 5 % wrong, 15 % untold.',
    ),
    ...bars,
    text(
      20,
      under - 18,
      'Verdicts: said (across) and right (up). Filled: all answers right. Hollow: 5 % wrong, 15 % untold.',
    ),
    ...axes(under),
    ...curve(calibration.clean, under, DARK),
    ...curve(calibration.noisy, under, 'none'),
    '</svg>',
    '',
  ].join('\n');
}

function bar(y: number, width: number, fill: string, value: number): string {
  const shape = `<rect x="${LABEL}" y="${y}" width="${width.toFixed(1)}" height="${BAR - 1}" fill="${fill}"/>`;
  return `${shape}${text(LABEL + width + 6, y + BAR - 2, value.toFixed(0))}`;
}

function axes(top: number): readonly string[] {
  const line = (x1: number, y1: number, x2: number, y2: number, dash = ''): string =>
    `<line x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" stroke="${INK}" stroke-width="1"${dash}/>`;
  const ticks = [0, 0.5, 1].flatMap((share) => [
    text(LABEL + share * CURVE, top + CURVE + 18, `${share * 100} %`, 'middle'),
    text(LABEL - 10, top + CURVE - share * CURVE + 4, `${share * 100} %`, 'end'),
  ]);
  return [
    line(LABEL, top + CURVE, LABEL + CURVE, top + CURVE),
    line(LABEL, top + CURVE, LABEL, top),
    line(LABEL, top + CURVE, LABEL + CURVE, top, ' stroke-dasharray="4 4"'),
    ...ticks,
  ];
}

/** One dot a bin, the larger the more verdicts; bins of fewer than five say too little. */
function curve({ bins, verdicts }: Calibration, top: number, fill: string): readonly string[] {
  return bins
    .filter((bin) => bin.verdicts >= 5)
    .map((bin) => {
      const [x, y] = [LABEL + bin.said * CURVE, top + CURVE - bin.right * CURVE];
      const radius = 3 + 12 * Math.sqrt(bin.verdicts / Math.max(1, verdicts));
      return `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${radius.toFixed(1)}" fill="${fill}" fill-opacity="0.6" stroke="${DARK}"/>`;
    });
}

function text(x: number, y: number, words: string, anchor = 'start'): string {
  const safe = words.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<text x="${x.toFixed(1)}" y="${y.toFixed(1)}" text-anchor="${anchor}" fill="${INK}">${safe}</text>`;
}
