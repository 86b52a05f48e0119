import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { poeClass } from '../../../src/arithmetic/power/poe-classes.js';
import { type PoeRunInputs, poeRun } from '../../../src/arithmetic/power/poe-run.js';
import { metres, volts, watts } from '../../../src/values/units/physical.js';
import { exactly } from '../../../src/values/units/range.js';
import { awg, mm2 } from '../../../src/values/units/wire.js';
import { length, power, temperature, voltage, wire } from './given.js';

/** A camera of class 3 on 90 m of solid copper: nothing about it is unknown. */
const KNOWN: PoeRunInputs = {
  sourceKind: 'standard',
  camera: poeClass(3),
  cameraWatts: power('12.95 W'),
  portWatts: power('15.4 W'),
  sourceVolts: voltage('48 V'),
  metres: length('90 m'),
  wire: wire('24 AWG'),
  metal: 'copper',
  celsius: temperature('20 °C'),
};

describe('power over one network cable', () => {
  // d-const-power, circuit theory: 48 V, 8.42 ohm (100 m of 24 AWG), 12.95 W.
  test('reckons with one conductor for two pairs', () => {
    const { best } = poeRun({ ...KNOWN, metres: length('100 m') });
    expect(best.loop).toBeCloseTo(8.42, 2);
    expect(best.point?.amps).toBeCloseTo(0.28393, 4);
    expect(best.point?.deviceVolts).toBeCloseTo(45.6093, 2);
  });

  test('reckons with half of one for four', () => {
    const { best } = poeRun({
      ...KNOWN,
      camera: poeClass(6),
      portWatts: power('60 W'),
      metres: length('100 m'),
    });
    expect(best.loop).toBeCloseTo(4.21, 2);
  });

  test.each([3, 4, 5, 6, 7, 8])('class %d at its limit is fine on 100 m of good copper', (number) => {
    const one = poeClass(number);
    const run = poeRun({
      ...KNOWN,
      camera: one,
      cameraWatts: exactly(one.cameraWatts),
      portWatts: exactly(one.portWatts),
      sourceVolts: exactly(one.leastPortVolts),
      metres: length('100 m'),
      celsius: temperature('40 °C'),
    });
    expect(run.verdict).toBe('fine');
    expect(run.worst.longestMetres).toBeGreaterThan(100);
  });

  test.each<[string, Partial<PoeRunInputs>, string, string | undefined]>([
    ['a known short run', {}, 'fine', undefined],
    ['nothing known but the kind', { ...nothing(), sourceKind: 'standard' }, 'doubtful', 'cameraWatts'],
    [
      'a length that may be too long',
      { metres: length('60-400 m'), sourceVolts: voltage('44 V') },
      'doubtful',
      'metres',
    ],
    [
      'a metal that is not known, on a run that only copper carries',
      { metres: length('200 m'), metal: undefined, sourceVolts: voltage('44 V') },
      'doubtful',
      'metal',
    ],
    ['a run that nothing carries', { metres: length('900-2000 m') }, 'impossible', undefined],
    [
      'a class 4 camera on a port that may be small',
      { camera: poeClass(4), cameraWatts: power('10-25 W'), portWatts: undefined },
      'doubtful',
      'cameraWatts',
    ],
    [
      'a class 4 camera at its limit on a small port',
      { camera: poeClass(4), cameraWatts: power('20-25 W') },
      'impossible',
      undefined,
    ],
    [
      'the same on a port of which nothing is known',
      { camera: poeClass(4), cameraWatts: power('25 W'), portWatts: undefined },
      'doubtful',
      'portWatts',
    ],
  ])('%s', (_, change, verdict, decides) => {
    const run = poeRun({ ...KNOWN, ...change });
    expect([run.verdict, run.decides]).toEqual([verdict, decides]);
  });

  // IEEE 802.3: each class is laid out for 100 m of the poorest cable, its least volts and its full power.
  test.each([0, 1, 2, 3, 4, 5, 6, 7, 8])(
    'class %d reaches 100 m of the poorest cable it is laid out for',
    (number) => {
      const one = poeClass(number);
      const conductor = mm2(17.24 / ((one.mostLoopOhms * one.pairs) / 2 / 0.1));
      const { best } = poeRun({
        ...KNOWN,
        camera: one,
        cameraWatts: exactly(one.cameraWatts),
        portWatts: exactly(one.portWatts),
        sourceVolts: exactly(one.leastPortVolts),
        metres: length('100 m'),
        wire: { thinnest: conductor, thickest: conductor },
      });
      expect(best.loop).toBeCloseTo(one.mostLoopOhms, 9);
      expect(best.longestMetres).toBeGreaterThanOrEqual(100 - 1e-9);
      expect(best.longestMetres).toBeLessThan(106);
    },
  );

  test('reckons with two pairs at worst where the class may be one that uses two', () => {
    const { best, worst } = poeRun({ ...KNOWN, camera: undefined, cameraWatts: power('20-40 W') });
    expect([best.scenario.pairs, worst.scenario.pairs]).toEqual([4, 2]);
  });

  test('takes the class from the watts where it was not said', () => {
    const { classes } = poeRun({ ...KNOWN, camera: undefined, cameraWatts: power('5-20 W') });
    expect([classes?.low.number, classes?.high.number]).toEqual([2, 4]);
  });
});

describe('kinds of power', () => {
  test('that do not go together are impossible, however good the sum is', () => {
    const run = poeRun({ ...KNOWN, camera: 'passive' });
    expect([run.verdict, run.pairing]).toEqual(['impossible', 'mixed']);
    expect(poeRun({ ...KNOWN, sourceKind: undefined, sourceVolts: voltage('24 V') }).verdict).toBe(
      'impossible',
    );
  });

  test('that are not known leave nothing fine, and are asked for first', () => {
    const source = poeRun({ ...KNOWN, sourceKind: undefined });
    expect([source.verdict, source.decides]).toEqual(['doubtful', 'sourceKind']);
    const camera = poeRun({
      ...KNOWN,
      sourceKind: 'passive',
      camera: undefined,
      leastVolts: voltage('36 V'),
    });
    expect([camera.verdict, camera.decides]).toEqual(['doubtful', 'camera']);
  });

  test('passive at both ends are reckoned by their labels, not by a class', () => {
    const passive: PoeRunInputs = {
      ...KNOWN,
      sourceKind: 'passive',
      camera: 'passive',
      sourceVolts: voltage('24 V'),
      portWatts: power('24 W'),
      cameraWatts: power('6 W'),
      leastVolts: voltage('18 V'),
    };
    const run = poeRun(passive);
    expect([run.verdict, run.classes]).toEqual(['fine', undefined]);
    const unsaid = poeRun({ ...passive, leastVolts: undefined });
    // Common practice, no source: labels allow 10 % under the nominal volts, many cameras work with 25 % under.
    expect([unsaid.best.scenario.leastVolts, unsaid.worst.scenario.leastVolts]).toEqual([18, 24 * 0.9]);
    expect(poeRun({ ...passive, cameraWatts: power('16 W') }).verdict).toBe('impossible');
  });
});

function nothing(): Partial<PoeRunInputs> {
  return {
    camera: undefined,
    cameraWatts: undefined,
    portWatts: undefined,
    sourceVolts: undefined,
    metres: undefined,
    wire: undefined,
    metal: undefined,
    celsius: undefined,
  };
}

describe('power over one network cable, for any run', () => {
  const run = fc.integer({ min: 1, max: 600 });
  const gauge = fc.integer({ min: 20, max: 28 });
  const taken = fc.double({ min: 1, max: 25, noNaN: true });
  const held = fc.double({ min: 44, max: 57, noNaN: true });
  const at = (long: number, size: number, takes: number, source: number) =>
    poeRun({
      ...KNOWN,
      camera: poeClass(4),
      portWatts: power('30 W'),
      metres: exactly(metres(long)),
      wire: { thinnest: awg(size), thickest: awg(size) },
      cameraWatts: exactly(watts(takes)),
      sourceVolts: exactly(volts(source)),
    });
  const arrives = (...numbers: Parameters<typeof at>): number => at(...numbers).worst.point?.deviceVolts ?? 0;
  const RANK = { impossible: 0, doubtful: 1, fine: 2 } as const;

  test('longer is never better and thicker never worse', () => {
    fc.assert(
      fc.property(run, gauge, taken, held, (long, size, takes, source) => {
        const here = arrives(long, size, takes, source);
        expect(arrives(long + 1, size, takes, source)).toBeLessThanOrEqual(here);
        expect(arrives(long, size - 1, takes, source)).toBeGreaterThanOrEqual(here);
        const verdict = RANK[at(long, size, takes, source).verdict];
        expect(RANK[at(long + 50, size, takes, source).verdict]).toBeLessThanOrEqual(verdict);
        expect(RANK[at(long, size - 2, takes, source).verdict]).toBeGreaterThanOrEqual(verdict);
      }),
      { numRuns: 1_000 },
    );
  });

  test('just works on the longest run, and not beyond it', () => {
    fc.assert(
      fc.property(gauge, taken, held, (size, takes, source) => {
        const longest = at(1, size, takes, source).worst.longestMetres;
        if (longest < 2) return;
        expect(at(longest * 0.999, size, takes, source).verdict).toBe('fine');
        expect(at(longest * 1.001, size, takes, source).verdict).not.toBe('fine');
      }),
    );
  });

  test('a narrower range of lengths never turns fine or impossible round', () => {
    fc.assert(
      fc.property(run, run, run, gauge, taken, (one, other, middle, size, takes) => {
        const [short, long] = [Math.min(one, other), Math.max(one, other)];
        const inputs = {
          ...KNOWN,
          camera: poeClass(4),
          portWatts: power('30 W'),
          cameraWatts: exactly(watts(takes)),
        };
        const of = (least: number, most: number) =>
          poeRun({
            ...inputs,
            wire: { thinnest: awg(size), thickest: awg(size) },
            metres: { least: metres(least), most: metres(most) },
          }).verdict;
        const wide = of(short, long);
        const known = Math.min(long, Math.max(short, middle));
        if (wide !== 'doubtful') expect(of(known, known)).toBe(wide);
      }),
      { numRuns: 500 },
    );
  });
});
