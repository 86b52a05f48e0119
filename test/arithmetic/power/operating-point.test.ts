import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  greatestLoop,
  greatestWatts,
  type Load,
  operatingPoint,
} from '../../../src/arithmetic/power/operating-point.js';
import { amps, ohms, volts, watts } from '../../../src/values/units/physical.js';
import { powerRow } from './references.js';

const takes = (power: number): Load => ({ kind: 'watts', watts: watts(power) });
const draws = (current: number): Load => ({ kind: 'amps', amps: amps(current) });
const pointAt = (source: number, loop: number, load: Load) => operatingPoint(volts(source), ohms(loop), load);

interface ConstantPower {
  readonly V: number;
  readonly R: number;
  readonly Ppd: number;
  readonly I?: number;
  readonly Vpd?: number;
  readonly loss?: number;
  readonly Psource?: number;
}

describe('a device that takes constant power', () => {
  // Circuit theory, from memory (d-const-power); the first two are the worst cases of IEEE 802.3 types 1 and 2.
  test.each(powerRow<readonly ConstantPower[]>('d-const-power').filter(({ I }) => I !== undefined))(
    'at $V V over $R ohm with $Ppd W',
    (row) => {
      const point = pointAt(row.V, row.R, takes(row.Ppd));
      expect(point?.amps).toBeCloseTo(row.I ?? 0, 4);
      expect(point?.deviceVolts).toBeCloseTo(row.Vpd ?? 0, 3);
      expect(point?.lossWatts).toBeCloseTo(row.loss ?? 0, 3);
      expect(point?.sourceWatts).toBeCloseTo(row.Psource ?? 0, 3);
    },
  );

  test('does not run where the loop lets too little through', () => {
    const row = powerRow<readonly ConstantPower[]>('d-const-power').find(({ I }) => I === undefined);
    if (row === undefined) throw new Error('no row without an operating point');
    expect(pointAt(row.V, row.R, takes(row.Ppd))).toBeUndefined();
    expect(greatestWatts(volts(row.V), ohms(row.R))).toBeCloseTo(7.2, 9);
    expect(pointAt(row.V, row.R, takes(7.2))?.deviceVolts).toBeCloseTo(row.V / 2, 6);
    expect(pointAt(row.V, row.R, takes(7.21))).toBeUndefined();
  });

  // Application note on PoE cable loss, d-type1: 44 V, 20 ohm, 350 mA, 12.95 W. d-type2: 50 V, 12.5 ohm, 600 mA, 25.5 W.
  test.each(['d-type1', 'd-type2'])('meets the worst case of IEEE 802.3: %s', (id) => {
    const row = powerRow<{ pse_v: number[]; pd_v: number[]; max_ma: number; loop_ohm: number; pd_w: number }>(
      id,
    );
    const point = pointAt(row.pse_v[0] ?? 0, row.loop_ohm, takes(row.pd_w));
    expect((point?.amps ?? 0) * 1000).toBeCloseTo(row.max_ma, 6);
    expect(point?.deviceVolts).toBeCloseTo(row.pd_v[0] ?? 0, 6);
  });

  // Application note on PoE cable loss, d-step-method: the same worst case from the source's side.
  test('agrees with the published step method', () => {
    const { P, V, R, Vpd, Ppd } = powerRow<{ example_44V: Record<'P' | 'V' | 'R' | 'Vpd' | 'Ppd', number> }>(
      'd-step-method',
    ).example_44V;
    const point = pointAt(V, R, takes(Ppd));
    expect(point?.sourceWatts).toBeCloseTo(P, 6);
    expect(point?.deviceVolts).toBeCloseTo(Vpd, 6);
  });
});

interface Drop {
  readonly drop_v: number;
  readonly amps: number;
}

describe('a device that draws a constant current', () => {
  // Electrician training page, lesson example: 100 ft of 16 AWG stranded, 4 A at 24 V lose 3.992 V, 16.63 %.
  test('e-vd-1: two-way drop over 100 ft', () => {
    const row = powerRow<Drop & { length_ft: number; ohm_per_kft: number }>('e-vd-1');
    const point = pointAt(24, (2 * row.length_ft * row.ohm_per_kft) / 1000, draws(row.amps));
    expect(point?.dropVolts).toBeCloseTo(row.drop_v, 9);
    expect((100 * (point?.dropVolts ?? 0)) / 24).toBeCloseTo(16.63, 2);
  });

  // DC voltage drop reference page: 100 A over 15 ft one way at 12 V.
  test.each(['e-vd-3a', 'e-vd-3c'])('%s: 100 A over 15 ft', (id) => {
    const row = powerRow<Drop & { one_way_ft: number; ohm_per_100ft: number; percent: number }>(id);
    const point = pointAt(12, (2 * row.one_way_ft * row.ohm_per_100ft) / 100, draws(row.amps));
    expect(point?.dropVolts).toBeCloseTo(row.drop_v, 9);
    expect((100 * (point?.dropVolts ?? 0)) / 12).toBeCloseTo(row.percent, 9);
  });

  // Home page on solar projects, sample calculation: 1 A over 20 m of 16 AWG at 12 V.
  test('e-vd-5: 1 A over 20 m', () => {
    const row = powerRow<
      Drop & { metres: number; mm2: number; ohm_mm2_per_m: number; percent_of_12: number }
    >('e-vd-5');
    const point = pointAt(12, (2 * row.metres * row.ohm_mm2_per_m) / row.mm2, draws(row.amps));
    expect(point?.dropVolts).toBeCloseTo(row.drop_v, 3);
    expect((100 * (point?.dropVolts ?? 0)) / 12).toBeCloseTo(row.percent_of_12, 2);
  });

  // Blog worked example: 7 ohm a conductor, 175 mA in each of four wires.
  test('d-loss-2.45: the drop of a published category cable', () => {
    const { example } = powerRow<{
      example: { ohm_per_conductor: number; a_per_wire: number; drop_v: number; loss_w: number };
    }>('d-loss-2.45');
    // Two wires side by side each way: twice the current through the resistance of one.
    const point = pointAt(44, example.ohm_per_conductor, draws(2 * example.a_per_wire));
    expect(point?.dropVolts).toBeCloseTo(example.drop_v, 9);
    expect(point?.lossWatts).toBeCloseTo(example.loss_w, 2);
  });

  test('gets nothing where all volts stay on the cable', () => {
    expect(pointAt(12, 12, draws(1))).toBeUndefined();
    expect(pointAt(12, 11.9, draws(1))?.deviceVolts).toBeCloseTo(0.1, 9);
  });
});

const source = fc.double({ min: 5, max: 60, noNaN: true });
const loop = fc.double({ min: 0, max: 60, noNaN: true });
const power = fc.double({ min: 0.1, max: 90, noNaN: true });
const load = fc.oneof(power.map(takes), fc.double({ min: 0.001, max: 5, noNaN: true }).map(draws));

describe('an operating point, for any supply, loop and load', () => {
  test('put back into Ohm’s law balances, and no energy is lost or made', () => {
    fc.assert(
      fc.property(source, loop, load, (v, r, taken) => {
        const point = pointAt(v, r, taken);
        if (point === undefined) return;
        expect(point.deviceVolts + point.amps * r).toBeCloseTo(v, 9);
        expect(point.dropVolts).toBeCloseTo(point.amps * r, 9);
        expect(point.deviceVolts * point.amps).toBeCloseTo(point.deviceWatts, 7);
        expect(point.deviceWatts + point.lossWatts).toBeCloseTo(point.sourceWatts, 7);
      }),
      { numRuns: 2_000 },
    );
  });

  test('is the one with the higher volts, as switching supplies settle', () => {
    fc.assert(
      fc.property(source, loop, power, (v, r, p) => {
        const point = pointAt(v, r, takes(p));
        if (point !== undefined) expect(point.deviceVolts).toBeGreaterThanOrEqual(v / 2 - 1e-9);
      }),
    );
  });

  test('a longer loop, more power or fewer volts are never better', () => {
    const more = fc.double({ min: 0, max: 10, noNaN: true });
    fc.assert(
      fc.property(source, loop, power, more, (v, r, p, extra) => {
        const got = pointAt(v, r, takes(p))?.deviceVolts ?? 0;
        expect(pointAt(v, r + extra, takes(p))?.deviceVolts ?? 0).toBeLessThanOrEqual(got + 1e-9);
        expect(pointAt(v, r, takes(p + extra))?.deviceVolts ?? 0).toBeLessThanOrEqual(got + 1e-9);
        expect(pointAt(v + extra, r, takes(p))?.deviceVolts ?? 0).toBeGreaterThanOrEqual(got - 1e-9);
      }),
      { numRuns: 2_000 },
    );
  });
});

describe('the greatest loop', () => {
  // IEEE 802.3 types 1 and 2: laid out for exactly 20 and 12.5 ohm.
  test.each([
    [44, 12.95, 37, 15.4, 20],
    [50, 25.5, 42.5, 30, 12.5],
  ])('at %d V, %d W, %d V at the device, %d W from the source is %d ohm', (v, p, least, most, expected) => {
    expect(greatestLoop(volts(v), watts(p), volts(least), watts(most))).toBeCloseTo(expected, 9);
  });

  test('is none where volts or watts are short from the start', () => {
    expect(greatestLoop(volts(36), watts(5), volts(37), watts(15.4))).toBe(0);
    expect(greatestLoop(volts(48), watts(16), volts(37), watts(15.4))).toBe(0);
  });

  test('just works, and nothing longer does', () => {
    const share = fc.double({ min: 0.05, max: 0.99, noNaN: true });
    const surplus = fc.double({ min: 1.01, max: 4, noNaN: true });
    fc.assert(
      fc.property(source, power, share, surplus, (v, p, least, most) => {
        const longest = greatestLoop(volts(v), watts(p), volts(v * least), watts(p * most));
        const works = (r: number): boolean => {
          const point = pointAt(v, r, takes(p));
          return point !== undefined && point.deviceVolts >= v * least && point.sourceWatts <= p * most;
        };
        expect(works(longest * 0.999)).toBe(true);
        expect(works(longest * 1.001)).toBe(false);
      }),
      { numRuns: 2_000 },
    );
  });
});
