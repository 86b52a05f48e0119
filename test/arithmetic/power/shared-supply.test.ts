import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { twoWireLoop } from '../../../src/arithmetic/power/conductor.js';
import { type Load, operatingPoint } from '../../../src/arithmetic/power/operating-point.js';
import { alongOneCable, type FedCamera, inAStar } from '../../../src/arithmetic/power/shared-supply.js';
import { amps, metres, ohmsPerKilometre, volts, watts } from '../../../src/values/units/physical.js';

const WIRE = ohmsPerKilometre(20);
const SUPPLY = volts(12);
const camera = (run: number, load: Load): FedCamera => ({ metres: metres(run), load });
const draws = (current: number): Load => ({ kind: 'amps', amps: amps(current) });
const takes = (power: number): Load => ({ kind: 'watts', watts: watts(power) });

describe('cameras along one cable', () => {
  // Worked by hand with Kirchhoff's laws: 20 ohm/km, 10 m and 10 m more, 0.4 ohm for each piece of two wires.
  test('each piece carries the current of all behind it', () => {
    const fed = alongOneCable(SUPPLY, WIRE, [camera(10, draws(1)), camera(20, draws(0.5))]);
    expect(fed?.cameras[0]?.volts).toBeCloseTo(12 - 1.5 * 0.4, 9);
    expect(fed?.cameras[1]?.volts).toBeCloseTo(12 - 1.5 * 0.4 - 0.5 * 0.4, 9);
    expect(fed?.sourceWatts).toBeCloseTo(18, 9);
  });

  test('stand where they stand, in whatever order they are named', () => {
    const near = camera(10, takes(4));
    const far = camera(40, takes(5));
    const one = alongOneCable(SUPPLY, WIRE, [near, far]);
    const other = alongOneCable(SUPPLY, WIRE, [far, near]);
    expect(one?.cameras.map(({ volts: held }) => held)).toEqual(
      other?.cameras.map(({ volts: held }) => held).reverse(),
    );
  });

  test('cannot be fed where the volts collapse', () => {
    expect(alongOneCable(SUPPLY, WIRE, [camera(100, takes(5)), camera(200, takes(5))])).toBeUndefined();
    expect(alongOneCable(SUPPLY, WIRE, [camera(300, draws(1))])).toBeUndefined();
  });

  test('a single one gets what the quadratic gives', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 100, noNaN: true }),
        fc.double({ min: 0.5, max: 7, noNaN: true }),
        (run, power) => {
          const point = operatingPoint(SUPPLY, twoWireLoop(WIRE, metres(run)), takes(power));
          const fed = alongOneCable(SUPPLY, WIRE, [camera(run, takes(power))]);
          expect(fed?.cameras[0]?.volts).toBeCloseTo(point?.deviceVolts ?? 0, 6);
        },
      ),
    );
  });
});

describe('any cameras on one supply', () => {
  const run = fc.double({ min: 1, max: 60, noNaN: true });
  const load = fc.oneof(
    fc.double({ min: 0.5, max: 4, noNaN: true }).map(takes),
    fc.double({ min: 0.05, max: 0.4, noNaN: true }).map(draws),
  );
  const some = fc.array(fc.tuple(run, load), { minLength: 1, maxLength: 4 });

  test('the supply gives what the cameras take and the cable loses', () => {
    fc.assert(
      fc.property(some, (given) => {
        const cameras = given.map(([far, taken]) => camera(far, taken)).sort((a, b) => a.metres - b.metres);
        const fed = alongOneCable(SUPPLY, WIRE, cameras);
        if (fed === undefined) return;
        // Piece by piece from the supply: its current squared times its own resistance.
        const lost = cameras.reduce((sum, { metres: here }, index) => {
          const piece = here - (cameras[index - 1]?.metres ?? 0);
          const behind = fed.cameras.slice(index).reduce((total, one) => total + one.amps, 0);
          return sum + behind ** 2 * twoWireLoop(WIRE, metres(piece));
        }, 0);
        const taken = fed.cameras.reduce((sum, one) => sum + one.volts * one.amps, 0);
        expect(taken + lost).toBeCloseTo(fed.sourceWatts, 6);
        cameras.forEach(({ load: wanted }, index) => {
          const got = fed.cameras[index];
          if (wanted.kind === 'watts')
            expect((got?.volts ?? 0) * (got?.amps ?? 0)).toBeCloseTo(wanted.watts, 6);
        });
      }),
      { numRuns: 500 },
    );
  });

  test('get no less on cables of their own than along one', () => {
    fc.assert(
      fc.property(some, (given) => {
        const cameras = given.map(([far, taken]) => camera(far, taken));
        const along = alongOneCable(SUPPLY, WIRE, cameras);
        const star = inAStar(SUPPLY, WIRE, cameras);
        if (along === undefined) return;
        cameras.forEach((_, index) => {
          expect(star?.cameras[index]?.volts ?? 0).toBeGreaterThanOrEqual(
            (along.cameras[index]?.volts ?? 99) - 1e-6,
          );
        });
      }),
      { numRuns: 500 },
    );
  });
});
