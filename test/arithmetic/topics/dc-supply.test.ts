import { describe, expect, test } from 'vitest';
import { DC_SUPPLY } from '../../../src/arithmetic/topics/dc-supply.js';
import { reckoned, refusal, wordsOf } from './power-topics.js';

const GIVEN = {
  'supply-volts': '12 V',
  length: '30 m',
  day: '0,3 A',
  night: '0,8 A',
  'supply-rating': '2 A',
  'least-volts': '10.8 V',
  wire: '0.5 mm2',
  metal: 'copper',
  temperature: '20 °C',
};

describe('the sum of a low-voltage supply', () => {
  test('finds what is fine by day and too much at dusk', () => {
    const reckoning = reckoned(DC_SUPPLY, GIVEN);
    expect(reckoning.verdict).toBe('impossible');
    expect(reckoning.data).toMatchObject({ day: { verdict: 'fine' }, night: { verdict: 'impossible' } });
    expect(wordsOf(reckoning)).toContain('It is the infrared at dusk that may be too much');
    expect(reckoning.data.thinnestMetricWire).toBe('1 mm²');
  });

  test('finds an adapter that is too weak, by night only', () => {
    const weak = reckoned(DC_SUPPLY, { ...GIVEN, length: '2 m', 'supply-rating': '500 mA' });
    expect(weak.data).toMatchObject({ day: { verdict: 'fine' }, night: { verdict: 'impossible' } });
    expect(wordsOf(weak)).toContain('It can give 6 W only, and may switch off.');
  });

  // Electrician training page, lesson example (e-vd-1): 100 ft, 4 A. At 75 °C its 16 AWG has 4.99 ohm per 1000 ft stranded
  // and 4.89 solid (NEC chapter 9 table 8): 3.99 V and 3.91 V are lost of 24.
  test('brackets a published drop', () => {
    const { data } = reckoned(DC_SUPPLY, {
      ...GIVEN,
      'supply-volts': '24 V',
      length: '100 ft',
      wire: '16 AWG',
      temperature: '75 C',
      night: '4 A',
      'supply-rating': '10 A',
    });
    const { atBest } = data.night as {
      atBest: { cameras: readonly { cameraVolts: number }[]; loopOhms: number };
    };
    expect(24 - (atBest.cameras[0]?.cameraVolts ?? 0)).toBeCloseTo(2 * 0.1 * 4.89 * 4, 1);
    const { atWorst } = data.night as { atWorst: { loopOhms: number } };
    expect(4 * atWorst.loopOhms).toBeGreaterThanOrEqual(3.99);
    expect(4 * atWorst.loopOhms).toBeLessThan(4.05);
  });

  test('names the source of each constant', () => {
    const metric = wordsOf(reckoned(DC_SUPPLY, GIVEN));
    for (const source of ['IEC 60028', 'IEC 60228', '0.00393']) expect(metric).toContain(source);
    const gauge = wordsOf(reckoned(DC_SUPPLY, { ...GIVEN, wire: '18 AWG', metal: '?' }));
    for (const source of ['ASTM B258', 'ASTM B566', 'NEC chapter 9']) expect(gauge).toContain(source);
  });

  test('says what was taken as usual where nobody knew', () => {
    const words = wordsOf(reckoned(DC_SUPPLY, { 'supply-volts': '?', length: '?' }));
    expect(words.match(/common practice, no source/g)?.length).toBe(7);
    expect(words).toContain('It is not known what the camera takes');
    expect(wordsOf(reckoned(DC_SUPPLY, { ...GIVEN, night: '?' }))).toContain('up to 8 W more');
  });

  test('shares a supply, along one cable or each on its own', () => {
    const shared = {
      ...GIVEN,
      night: '6 W',
      day: '?',
      length: '20 m',
      others: '15 m 6 W; 25 m 6 W',
      wire: '0.75 mm2',
    };
    const star = reckoned(DC_SUPPLY, { ...shared, layout: 'star' });
    const along = reckoned(DC_SUPPLY, { ...shared, layout: 'along' });
    expect([star.verdict, along.verdict]).toEqual(['fine', 'impossible']);
    expect(reckoned(DC_SUPPLY, shared)).toMatchObject({ verdict: 'doubtful', decides: 'layout' });
    expect(wordsOf(along)).toMatch(
      /The camera at 25 m gets [\d.]+ V\. It needs 10\.8 V, so it is too little\./,
    );
  });

  test.each([
    [{ length: '5 m' }, 'supply-volts', 'amount.missing'],
    [{ 'supply-volts': '230 V', length: '5 m' }, 'supply-volts', 'typed.number-outside'],
    [{ 'supply-volts': '12 V', length: '5 m', night: '12 V' }, 'night', 'typed.unit-other'],
    [{ 'supply-volts': '12 V', length: '5 m', others: 'two' }, 'others', 'measure.other-unclear'],
  ])('%j is refused at %s', (given, input, problem) => {
    expect(refusal(DC_SUPPLY, given)).toEqual([input, problem]);
  });
});
