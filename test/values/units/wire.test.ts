import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf, awg, mm2, parseWire, showWire } from '../../../src/values/units/wire.js';
import { powerRows } from '../../arithmetic/power/references.js';

interface GaugeRow {
  readonly diameter_mm_formula: number;
  readonly area_mm2_formula: number;
}

function read(text: string): string {
  const parsed = parseWire(text);
  return parsed.ok ? showWire(parsed.value) : parsed.problem.id;
}

describe('the size of a wire', () => {
  test.each(powerRows<GaugeRow>('e-awg').map((row) => [row.id, row.source_title, row.value] as const))(
    'has the cross-section of ASTM B258: %s, %s',
    (id, _, published) => {
      expect(areaOf(awg(Number(id.replace('e-awg', ''))))).toBeCloseTo(published.area_mm2_formula, 4);
      expect(Math.sqrt((published.area_mm2_formula * 4) / Math.PI)).toBeCloseTo(
        published.diameter_mm_formula,
        3,
      );
    },
  );

  // ASTM B258 defines the two ends: 36 AWG is 0.005 in, 0000 (here -3) is 0.46 in. From memory.
  test.each([
    [36, 0.005],
    [-3, 0.46],
  ])('%d AWG is %d in thick by definition', (gauge, inches) => {
    expect(areaOf(awg(gauge))).toBeCloseTo((Math.PI / 4) * (inches * 25.4) ** 2, 9);
  });

  test.each([
    ['24 AWG', '24 AWG'],
    ['AWG24', '24 AWG'],
    ['awg 24', '24 AWG'],
    ['24AWG', '24 AWG'],
    ['24 gauge', '24 AWG'],
    ['#18', '18 AWG'],
    ['18 ga', '18 AWG'],
    ['22-24 AWG', '22–24 AWG'],
    ['AWG22 - AWG24', '22–24 AWG'],
    ['24 to 22 AWG', '22–24 AWG'],
    ['0.75 mm2', '0.75 mm²'],
    ['0,75mm²', '0.75 mm²'],
    ['2 x 0.75 mm2', '0.75 mm²'],
    ['2x0,75', '0.75 mm²'],
    ['0.5-0.75 mm2', '0.5–0.75 mm²'],
  ])('%j is read as %s', (text, shown) => {
    expect(read(text)).toBe(shown);
  });

  test.each([
    ['24', 'measure.wire-bare'],
    ['0.75', 'measure.wire-bare'],
    ['0.5 mm', 'measure.wire-diameter'],
    ['40 AWG', 'typed.number-outside'],
    ['2 AWG', 'typed.number-outside'],
    ['100 mm2', 'typed.number-outside'],
    ['24 V', 'typed.unit-other'],
    ['thin', 'typed.number-unclear'],
    ['', 'typed.empty'],
    ['about 24 AWG', 'measure.about'],
  ])('%j is refused', (text, id) => {
    expect(read(text)).toBe(id);
  });

  test('the thinner of two gauges has the higher number, of two cross-sections the lower', () => {
    const gauges = parseWire('22-24 AWG');
    const areas = parseWire('0.5-0.75 mm2');
    if (!gauges.ok || !areas.ok) throw new Error('not read');
    expect(gauges.value).toEqual({ thinnest: awg(24), thickest: awg(22) });
    expect(areas.value).toEqual({ thinnest: mm2(0.5), thickest: mm2(0.75) });
  });

  test('never throws, whatever is typed', () => {
    const piece = fc.constantFrom('24', '0.75', 'AWG', '#', ' ', 'mm', 'mm2', '²', '-', 'x', 'to', 'ga');
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(piece).map((it) => it.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const parsed = parseWire(typed);
        const { thinnest, thickest } = parsed.ok ? parsed.value : { thinnest: awg(24), thickest: awg(24) };
        expect(areaOf(thinnest)).toBeLessThanOrEqual(areaOf(thickest));
      }),
      { numRuns: 1_500 },
    );
  });
});
