import { describe, expect, it } from 'vitest';
import { calibrationOf } from './calls/calibration.js';
import type { Row } from './calls/rows.js';
import { pictureOf } from './picture.js';

const row = (policy: string, minutes: number): Row => ({
  ...{ policy, minutes, calls: 10, error: 1, questions: 7, remedies: 2, trips: 1, visits: 40, found: 90 },
});
const said = (probability: number, right: number, wrong: number) => [
  ...Array.from({ length: right }, () => ({ probability, isRight: true })),
  ...Array.from({ length: wrong }, () => ({ probability, isRight: false })),
];
const calibration = { clean: calibrationOf(said(0.85, 8, 2)), noisy: calibrationOf(said(0.35, 3, 3)) };
const drawn = {
  minutes: { clean: [row('ours', 100), row('a <list>', 200)], noisy: [row('ours', 150)] },
  calibration,
};

describe('the picture of a bench run', () => {
  const svg = pictureOf(drawn);

  it('draws each policy as long as its minutes, and says them', () => {
    const widths = [...svg.matchAll(/<rect x="190"[^>]* width="([\d.]+)"/g)].map(([, width]) =>
      Number(width),
    );
    expect(widths).toHaveLength(3);
    const [ours = 0, noisy = 0, list = 0] = widths;
    expect(list / ours).toBeCloseTo(2, 2);
    expect(noisy / ours).toBeCloseTo(1.5, 2);
    for (const words of ['>100<', '>150<', '>200<', '>ours<', '>a &lt;list><']) expect(svg).toContain(words);
  });

  it('puts what is said across and what is right up, and leaves out bins of a few', () => {
    const dots = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(dots).toHaveLength(2);
    const [[x = 0, y = 0] = [], [otherX = 0, otherY = 0] = []] = dots;
    expect((x - otherX) / 220).toBeCloseTo(0.5, 2);
    expect((otherY - y) / 220).toBeCloseTo(0.3, 2);
    const few = { ...drawn, calibration: { ...calibration, noisy: calibrationOf(said(0.35, 1, 1)) } };
    expect([...pictureOf(few).matchAll(/<circle/g)]).toHaveLength(1);
  });
});
