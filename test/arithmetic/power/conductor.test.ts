import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  conductorOhmsPerKilometre,
  type Metal,
  poeLoop,
  twoWireLoop,
} from '../../../src/arithmetic/power/conductor.js';
import { celsius, metres, ohmsPerKilometre } from '../../../src/values/units/physical.js';
import { awg, mm2, type Wire } from '../../../src/values/units/wire.js';
import { powerRow, powerRows } from './references.js';

const KFT_PER_KM = 1 / 0.3048;
const at = (wire: Wire, degrees = 20, spread: 'least' | 'most' = 'least', metal: Metal = 'copper'): number =>
  conductorOhmsPerKilometre(wire, metal, celsius(degrees), spread);

describe('one conductor', () => {
  test.each(
    powerRows<{ ohm_per_1000ft: number; ohm_per_km_formula: number }>('e-awg').map(
      (row) => [row.id, row.source_title, row.value] as const,
    ),
  )('of solid copper at 20 °C is as published: %s, %s', (id, _, published) => {
    const ours = at(awg(Number(id.replace('e-awg', ''))));
    expect(Math.abs(ours / KFT_PER_KM / published.ohm_per_1000ft - 1)).toBeLessThan(0.005);
    expect(ours).toBeCloseTo(published.ohm_per_km_formula, 1);
  });

  test.each(
    powerRows<{ solid: number; stranded: number }>('e-nec8-').map(
      (row) => [row.id, row.source_title, row.value] as const,
    ),
  )('at 75 °C is between solid and stranded, as published: %s, %s', (id, _, published) => {
    const gauge = awg(Number(id.replace('e-nec8-', '')));
    expect(Math.abs(at(gauge, 75) / KFT_PER_KM / published.solid - 1)).toBeLessThan(0.005);
    expect(at(gauge, 75, 'most') / KFT_PER_KM).toBeGreaterThanOrEqual(published.stranded * 0.997);
    expect(Math.abs(at(gauge, 75, 'most') / KFT_PER_KM / published.stranded - 1)).toBeLessThan(0.01);
  });

  test.each(
    powerRows<{ class1_2_plain: number; class5_6_plain: number }>('e-iec-')
      .filter((row) => row.id !== 'e-iec-kt')
      .map((row) => [row.id, row.source_title, row.value] as const),
  )('of a metric size has at most what IEC 60228 allows: %s, %s', (id, _, published) => {
    const size = mm2(Number(id.replace('e-iec-', '').replace('_', '.')));
    expect(at(size, 20, 'most')).toBe(published.class5_6_plain);
    expect(at(size)).toBeLessThan(published.class1_2_plain);
  });

  test('uses the resistivity and the coefficient that were published', () => {
    expect(at(mm2(1))).toBeCloseTo(powerRow<number>('e-rho') * 1e9, 9);
    expect(at(mm2(1), 21) / at(mm2(1)) - 1).toBeCloseTo(powerRow<number>('e-alpha'), 9);
    const { aluminium } = powerRow<{ aluminium: number }>('e-alpha-aluminium');
    const clad = (degrees: number): number => at(mm2(1), degrees, 'least', 'copper-clad-aluminium');
    expect(clad(21) / clad(20) - 1).toBeCloseTo(aluminium, 9);
  });

  test('of clad aluminium conducts as ASTM B566 has it', () => {
    const { percent_iacs_15, percent_iacs_10 } = powerRow<{
      percent_iacs_15: number;
      percent_iacs_10: number;
    }>('e-clad');
    const ratio = (spread: 'least' | 'most'): number =>
      at(awg(24), 20, spread) / at(awg(24), 20, spread, 'copper-clad-aluminium');
    expect(ratio('least') * 100).toBeCloseTo(percent_iacs_15, 6);
    expect(ratio('most') * 100).toBeCloseTo(percent_iacs_10, 6);
  });

  // IEC 60228 prints 1 / (1 + 0.004 (t − 20)); 0.00393 stays within 0.6 % of it up to 90 °C.
  test('follows the correction table of IEC 60228', () => {
    const factors = Object.entries(powerRow<Record<string, number>>('e-iec-kt'));
    expect(factors.length).toBeGreaterThan(10);
    for (const [degrees, factor] of factors) {
      expect(Math.abs((at(mm2(1)) / at(mm2(1), Number(degrees)) - factor) / factor)).toBeLessThan(0.006);
    }
  });

  const metal = fc.constantFrom<Metal>('copper', 'copper-clad-aluminium');
  const degrees = fc.integer({ min: -60, max: 90 });
  const spread = fc.constantFrom('least' as const, 'most' as const);
  const area = fc.double({ min: 0.05, max: 16, noNaN: true });

  test('a thicker wire never has more, in either system', () => {
    fc.assert(
      fc.property(area, area, metal, degrees, spread, (one, other, of, warm, end) => {
        const [thin, thick] = [mm2(Math.min(one, other)), mm2(Math.max(one, other))];
        expect(at(thick, warm, end, of)).toBeLessThanOrEqual(at(thin, warm, end, of));
      }),
      { numRuns: 1_000 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 7, max: 32 }), metal, degrees, spread, (gauge, of, warm, end) => {
        expect(at(awg(gauge - 1), warm, end, of)).toBeLessThan(at(awg(gauge), warm, end, of));
      }),
    );
  });

  test('a warmer one, a clad one and one at the high end have more', () => {
    fc.assert(
      fc.property(area, metal, degrees, spread, (size, of, warm, end) => {
        expect(at(mm2(size), warm + 1, end, of)).toBeGreaterThan(at(mm2(size), warm, end, of));
        expect(at(mm2(size), warm, end, 'copper-clad-aluminium')).toBeGreaterThan(at(mm2(size), warm, end));
        expect(at(mm2(size), warm, 'most', of)).toBeGreaterThanOrEqual(at(mm2(size), warm, 'least', of));
      }),
    );
  });
});

describe('a loop of 24 AWG, 100 m', () => {
  // Circuit theory, from memory (d-pair-loop): side by side, two wires have half of one.
  const published = powerRow<{ awg24_100m: Record<string, number> }>('d-pair-loop').awg24_100m;
  const perKilometre = conductorOhmsPerKilometre(awg(24), 'copper', celsius(20), 'least');

  test('is one conductor on two pairs, half on four, two on two wires', () => {
    expect(poeLoop(perKilometre, metres(100), 2)).toBeCloseTo(published.poe_2pair_loop ?? 0, 2);
    expect(poeLoop(perKilometre, metres(100), 4)).toBeCloseTo(published.poe_4pair_loop ?? 0, 2);
    expect(twoWireLoop(perKilometre, metres(100))).toBeCloseTo(published.two_wire_loop ?? 0, 2);
  });

  // Electrician maths page, e-vd-4: 18 AWG at 6.505 ohm/kft over 400 ft is 2.602 ohm, one way.
  test('agrees with a published run', () => {
    const row = powerRow<{ ohm_per_kft: number; feet: number; ohm: number }>('e-vd-4');
    const loop = twoWireLoop(ohmsPerKilometre(row.ohm_per_kft * KFT_PER_KM), metres(row.feet * 0.3048));
    expect(loop / 2).toBeCloseTo(row.ohm, 6);
  });
});
