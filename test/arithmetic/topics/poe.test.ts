import { describe, expect, test } from 'vitest';
import { POE } from '../../../src/arithmetic/topics/poe.js';
import { reckoned, refusal, wordsOf } from './power-topics.js';

const GIVEN = {
  length: '60-90 m',
  'camera-class': '3',
  'source-kind': 'standard',
  wire: '24 AWG',
  metal: 'copper',
  temperature: '20 C',
};

describe('the sum of power over a network cable', () => {
  test('gives the worst case of IEEE 802.3 type 1 with all that is asked', () => {
    // Application note on PoE cable loss (restates IEEE 802.3): 44 V, 20 ohm, 350 mA, 12.95 W, 37 V. One wire of
    // 0.1724 mm² has 100 ohm per km at 1.724e-8 ohm m, and on two pairs 200 m of it are the 20 ohm.
    const { data, verdict } = reckoned(POE, {
      ...GIVEN,
      length: '200 m',
      wire: '0.1724 mm2',
      'source-volts': '44 V',
      'camera-watts': '12.95 W',
    });
    expect(data.atBest).toMatchObject({ sourceVolts: 44, leastVolts: 37, portWatts: 15.4 });
    const best = data.atBest as Record<string, number>;
    expect(best.loopOhms).toBeCloseTo(20, 9);
    expect(best.amps).toBeCloseTo(0.35, 9);
    expect(best.cameraVolts).toBeCloseTo(37, 9);
    expect(best.sourceWatts).toBeCloseTo(15.4, 9);
    expect(best.longestMetres).toBeGreaterThanOrEqual(200);
    // The flexible kind of that size has more, so it is not fine over the whole range.
    expect(verdict).toBe('doubtful');
  });

  test('is fine, says how far it would go, and names every source', () => {
    const reckoning = reckoned(POE, GIVEN);
    expect([reckoning.verdict, reckoning.decides]).toEqual(['fine', undefined]);
    const words = wordsOf(reckoning);
    for (const source of ['IEEE 802.3', 'IEC 60028', 'ASTM B258', 'NEC chapter 9', 'from memory']) {
      expect(words).toContain(source);
    }
    expect(words).toMatch(/the longest run of this cable that still works is \d+ m/);
    expect(words).toContain('It proves nothing');
  });

  test('says which input would decide it, by the name of its option', () => {
    expect(reckoned(POE, { ...GIVEN, length: '?', wire: '26 AWG', 'camera-watts': '12 W' })).toMatchObject({
      verdict: 'doubtful',
      decides: 'length',
    });
    expect(reckoned(POE, { length: 'don’t know' })).toMatchObject({
      verdict: 'doubtful',
      decides: 'source-kind',
    });
    for (const option of ['length', 'source-kind']) {
      expect(POE.inputs.map(({ id }) => id)).toContain(option);
    }
  });

  test('warns of passive power, and does no sum where it is mixed with the standard', () => {
    const mixed = reckoned(POE, { ...GIVEN, 'source-kind': '', 'source-volts': '24 V' });
    expect(mixed.verdict).toBe('impossible');
    expect(wordsOf(mixed)).toContain('Stop, and do not plug it in');
    expect(wordsOf(mixed)).not.toContain('ohm per km');
    expect(wordsOf(reckoned(POE, { ...GIVEN, 'source-kind': 'passive', 'camera-class': '?' }))).toContain(
      'If either label says passive: stop',
    );
  });

  // Cabling article on TIA-568-C lengths (d-100m): 90 m of fixed cable and 10 m of leads.
  test('says that data ends at 100 m, only where the run may be longer', () => {
    expect(wordsOf(reckoned(POE, { ...GIVEN, length: '90-110 m' }))).toContain('TIA-568');
    expect(wordsOf(reckoned(POE, { ...GIVEN, length: '100 m' }))).not.toContain('TIA-568');
  });

  test('cautions about mains, live work, ladders, lightning and local code', () => {
    const words = wordsOf(reckoned(POE, GIVEN));
    for (const hazard of ['licensed electrician', 'Switch off first', 'Ladders', 'lightning', 'Local code']) {
      expect(words).toContain(hazard);
    }
  });

  test.each([
    [{ length: '5 km' }, 'length', 'typed.number-outside'],
    [{ length: 'about 50 m' }, 'length', 'measure.about'],
    [{ length: '50 m', 'camera-class': '9' }, 'camera-class', 'amount.not-a-choice'],
    [{ length: '50 m', 'source-volts': '230 V' }, 'source-volts', 'typed.number-outside'],
    [{ length: '50 m', wire: '0.5 mm' }, 'wire', 'measure.wire-diameter'],
    [{ length: '50 m', 'camera-watts': '12 V' }, 'camera-watts', 'typed.unit-other'],
    [{}, 'length', 'amount.missing'],
  ])('%j is refused at %s', (given, input, problem) => {
    expect(refusal(POE, given)).toEqual([input, problem]);
  });
});
