import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DcInputs, dcRun } from '../../../src/arithmetic/power/dc-run.js';
import { nightFrom, parseDraw, parseOthers } from '../../../src/arithmetic/power/draw.js';
import { metres, watts } from '../../../src/values/units/physical.js';
import { exactly } from '../../../src/values/units/range.js';
import { awg, mm2, showWire } from '../../../src/values/units/wire.js';
import { length, must, power, temperature, voltage, wire } from './given.js';

/** A camera of 6 W on 20 m of flexible 0.75 mm² from 12 V. */
const KNOWN: DcInputs = {
  supplyVolts: voltage('12 V'),
  rating: must(parseDraw('1 A')),
  draw: must(parseDraw('6 W')),
  leastVolts: voltage('10.8 V'),
  metres: length('20 m'),
  wire: wire('0.75 mm2'),
  metal: 'copper',
  celsius: temperature('20 °C'),
  others: [],
};

describe('a low-voltage supply', () => {
  test('holds amps constant at best, and lets them grow at worst', () => {
    const { best, worst } = dcRun({ ...KNOWN, draw: must(parseDraw('0.5 A')) });
    // 2 × 20 m × 17.24 / 0.75 ohm per km; 2 × 20 m × 26 ohm per km, the most of IEC 60228 class 5.
    expect(best.supply?.cameras[0]?.volts).toBeCloseTo(12 - (0.5 * 40 * 17.24) / 0.75 / 1000, 9);
    expect(worst.supply?.cameras[0]?.amps).toBeGreaterThan(0.5);
    const held = worst.supply?.cameras[0];
    expect((held?.volts ?? 0) + (held?.amps ?? 0) * 0.04 * 26).toBeCloseTo(12, 6);
    expect((held?.volts ?? 0) * (held?.amps ?? 0)).toBeCloseTo(6, 6);
  });

  test.each<[string, Partial<DcInputs>, string, string | undefined]>([
    ['a known short run', {}, 'fine', undefined],
    ['a long thin run', { metres: length('80 m'), wire: wire('24 AWG') }, 'impossible', undefined],
    ['a length that is not known', { metres: undefined }, 'doubtful', 'metres'],
    ['a wire that is not known', { wire: undefined }, 'doubtful', 'wire'],
    ['an adapter that is too weak', { rating: must(parseDraw('0.4 A')) }, 'impossible', undefined],
    ['an adapter that may be too weak', { rating: must(parseDraw('0.4-2 A')) }, 'doubtful', 'ratingWatts'],
    [
      'an adapter of which nothing is known',
      { rating: undefined, draw: must(parseDraw('12 W')), metres: length('5 m') },
      'doubtful',
      'ratingWatts',
    ],
    [
      'a least voltage that decides',
      { leastVolts: undefined, metres: length('45 m') },
      'doubtful',
      'leastVolts',
    ],
    [
      'a draw that may be too much',
      { draw: must(parseDraw('4-11 W')), metres: length('30 m') },
      'doubtful',
      'load',
    ],
    [
      'two more along the cable',
      { rating: must(parseDraw('3 A')), layout: 'along', others: must(parseOthers('30 m 6 W; 40 m 6 W')) },
      'impossible',
      undefined,
    ],
    [
      'the same, each on its own cable',
      { rating: must(parseDraw('3 A')), layout: 'star', others: must(parseOthers('15 m 6 W; 18 m 6 W')) },
      'fine',
      undefined,
    ],
    [
      'wired in a way that is not known',
      { rating: must(parseDraw('3 A')), others: must(parseOthers('22 m 6 W; 23 m 6 W')) },
      'doubtful',
      'layout',
    ],
  ])('%s', (_, change, verdict, decides) => {
    const run = dcRun({ ...KNOWN, ...change });
    expect([run.verdict, run.decides]).toEqual([verdict, decides]);
  });

  test('takes the least amps at best and the most at worst', () => {
    const { best, worst } = dcRun({ ...KNOWN, draw: must(parseDraw('0.3-0.5 A')) });
    expect(best.scenario.load).toEqual({ kind: 'amps', amps: 0.3 });
    expect(worst.scenario.load).toEqual({ kind: 'watts', watts: 6 });
  });

  test('names the thinnest wire that works, and the next thinner one does not', () => {
    const far = { ...KNOWN, metres: length('60 m') };
    const { thinnest } = dcRun(far);
    const size = (one: typeof thinnest.mm2) => one && showWire({ thinnest: one, thickest: one });
    expect([size(thinnest.mm2), size(thinnest.awg)]).toEqual(['1.5 mm²', '16 AWG']);
    const verdict = (one: ReturnType<typeof mm2>) =>
      dcRun({ ...far, wire: { thinnest: one, thickest: one } }).verdict;
    expect([verdict(mm2(1.5)), verdict(mm2(1)), verdict(awg(16)), verdict(awg(18))]).toEqual([
      'fine',
      'doubtful',
      'fine',
      'impossible',
    ]);
  });

  test('names none where even the thickest is too thin', () => {
    expect(dcRun({ ...KNOWN, metres: length('1500 m') }).thinnest).toEqual({
      mm2: undefined,
      awg: undefined,
    });
  });

  test('just works on the longest run, and not beyond it', () => {
    const longest = dcRun(KNOWN).longestMetres.worst;
    expect(longest).toBeGreaterThan(20);
    const at = (run: number) => dcRun({ ...KNOWN, metres: exactly(metres(run)) }).verdict;
    expect([at(longest), at(longest + 0.01)]).toEqual(['fine', 'doubtful']);
  });

  test('longer is never better, thicker never worse, another camera never better', () => {
    const rank = { impossible: 0, doubtful: 1, fine: 2 } as const;
    const run = fc.integer({ min: 1, max: 150 });
    const size = fc.integer({ min: 14, max: 26 });
    const taken = fc.double({ min: 1, max: 12, noNaN: true });
    const layout = fc.constantFrom('star' as const, 'along' as const, undefined);
    fc.assert(
      fc.property(run, size, taken, layout, (far, gauge, takes, laid) => {
        const given = (long: number, thick: number, others: DcInputs['others'] = []) =>
          rank[
            dcRun({
              ...KNOWN,
              metres: exactly(metres(long)),
              wire: { thinnest: awg(thick), thickest: awg(thick) },
              draw: { kind: 'watts', watts: exactly(watts(takes)) },
              layout: laid,
              others,
            }).verdict
          ];
        const here = given(far, gauge);
        expect(given(far + 20, gauge)).toBeLessThanOrEqual(here);
        expect(given(far, gauge - 2)).toBeGreaterThanOrEqual(here);
        const other = [{ metres: length('10 m'), draw: { kind: 'watts' as const, watts: power('2 W') } }];
        expect(given(far, gauge, other)).toBeLessThanOrEqual(here);
      }),
      { numRuns: 200 },
    );
  });
});

describe('what a camera takes', () => {
  test.each([
    ['0,5 A', 'amps', 0.5, 0.5],
    ['500 mA', 'amps', 0.5, 0.5],
    ['0.4', 'amps', 0.4, 0.4],
    ['6 W', 'watts', 6, 6],
    ['4-6 W', 'watts', 4, 6],
    ['400-600mA', 'amps', 0.4, 0.6],
  ])('%j is %s', (text, kind, least, most) => {
    const draw = must(parseDraw(text));
    expect([draw.kind, draw.kind === 'amps' ? draw.amps : draw.watts]).toEqual([kind, { least, most }]);
  });

  test('is refused in other units', () => {
    const parsed = parseDraw('12 V');
    expect(parsed.ok || parsed.problem.id).toBe('typed.unit-other');
  });

  test('at night is as much as by day and up to what infrared adds', () => {
    expect(nightFrom(must(parseDraw('0.5 A')), voltage('12 V'))).toEqual({
      kind: 'watts',
      watts: { least: 6, most: 14 },
    });
  });

  test('other cameras are read with length and draw', () => {
    expect(must(parseOthers('10 m 0.4 A; 30 ft 6 W'))).toEqual([
      { metres: { least: 10, most: 10 }, draw: { kind: 'amps', amps: { least: 0.4, most: 0.4 } } },
      { metres: { least: 9.144, most: 9.144 }, draw: { kind: 'watts', watts: { least: 6, most: 6 } } },
    ]);
    const unclear = parseOthers('the one by the gate');
    expect(unclear.ok || unclear.problem.id).toBe('measure.other-unclear');
  });
});
