import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../../../src/arithmetic/power/operating-point.js';
import {
  classForCamera,
  classForPort,
  POE_CLASSES,
  poeClass,
} from '../../../src/arithmetic/power/poe-classes.js';
import { watts } from '../../../src/values/units/physical.js';
import { powerRow, powerRows } from './references.js';

interface ClassRow {
  readonly type: string;
  readonly pse_w: number;
  readonly pd_w: number;
}
interface Derived {
  readonly vmin: number;
  readonly loop_ohm: number;
  readonly current_a: number;
  readonly pd_v: number;
  readonly pd_w_exact: number;
}

describe('the classes of IEEE 802.3', () => {
  test('are nine', () => {
    expect(POE_CLASSES.map(({ number }) => number)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  });

  test.each(POE_CLASSES.map((one) => [one.number, one] as const))(
    'class %d has the powers of the published class table',
    (number, one) => {
      const row = powerRow<ClassRow>(`d-class${number}`);
      expect({ type: String(one.type), pse_w: one.portWatts, pd_w: one.cameraWatts }).toEqual({
        type: row.type,
        pse_w: row.pse_w,
        pd_w: row.pd_w,
      });
    },
  );

  // Derived from the worst cases of IEEE 802.3; 6.25 ohm and 52 V from memory (d-class*-derive).
  test.each(POE_CLASSES.map((one) => [one.number, one] as const))(
    'class %d follows from its volts and its loop',
    (number, one) => {
      const row = powerRow<Derived>(`d-class${number}-derive`);
      expect([one.leastPortVolts, one.mostLoopOhms]).toEqual([row.vmin, row.loop_ohm]);
      const current = one.portWatts / one.leastPortVolts;
      expect(current).toBeCloseTo(row.current_a, 4);
      const exact = one.portWatts - current ** 2 * one.mostLoopOhms;
      expect(Math.round(exact * 1000) / 1000).toBe(row.pd_w_exact);
      expect(Math.abs(row.pd_w_exact / one.cameraWatts - 1)).toBeLessThan(0.002);
      const point = operatingPoint(one.leastPortVolts, one.mostLoopOhms, {
        kind: 'watts',
        watts: one.cameraWatts,
      });
      expect(point?.deviceVolts ?? 0).toBeGreaterThanOrEqual(one.leastCameraVolts);
      // Published powers are rounded: the port gives its own to 0.2 %.
      expect((point?.sourceWatts ?? 99) / one.portWatts).toBeLessThan(1.002);
    },
  );

  // Application note on PoE cable loss; reference table in a cable-tester manual.
  test('have the least volts of their types', () => {
    const later = powerRow<Record<'type3' | 'type4', { pse_v: number[]; pd_v: number[] }>>('d-type34');
    const rows = [
      powerRow<{ pse_v: number[]; pd_v: number[] }>('d-type1'),
      powerRow<{ pse_v: number[]; pd_v: number[] }>('d-type2'),
      later.type3,
      later.type4,
    ];
    expect(powerRows('d-type')).toHaveLength(3);
    for (const one of POE_CLASSES) {
      const row = rows[one.type - 1];
      expect([one.leastPortVolts, one.leastCameraVolts]).toEqual([row?.pse_v[0], row?.pd_v[0]]);
    }
  });

  test.each([
    [3.84, 1],
    [3.85, 2],
    [6.49, 2],
    [12.95, 3],
    [13, 4],
    [25.5, 4],
    [26, 5],
    [71.3, 8],
    [150, 8],
  ])('a camera of %d W is class %d at least', (power, number) => {
    expect(classForCamera(watts(power)).number).toBe(number);
  });

  test.each([
    [4, 1],
    [7, 2],
    [15.4, 3],
    [30, 4],
    [60, 6],
    [90, 8],
  ])('a port of %d W is one for class %d', (power, number) => {
    expect(classForPort(watts(power)).number).toBe(number);
  });

  test('there is no tenth', () => {
    expect(() => poeClass(9)).toThrow(RangeError);
  });
});
