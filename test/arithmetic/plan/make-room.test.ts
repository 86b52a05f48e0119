import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addressPlan } from '../../../src/arithmetic/plan/address-plan.js';
import { roomLines, smallerRange } from '../../../src/arithmetic/plan/make-room.js';
import type { Address } from '../../../src/values/address.js';
import type { Mask } from '../../../src/values/mask.js';

const BASE = 0xac172800;
const MASK: Mask = { kind: 'mask', prefix: 26 };
const at = (host: number): Address => ({ kind: 'ipv4', bits: BASE + host });
const range = (from: number, to: number) => ({ from: BASE + from, to: BASE + to });

describe('what would make room', () => {
  it('is a smaller range, with its numbers', () => {
    const lines = roomLines(at(1), MASK, range(2, 60), [range(1, 1)], 2, 5);
    expect(lines[0]).toEqual({ id: 'plan.too-few', with: { fits: 2, missing: 5 } });
    expect(lines[1]).toEqual({
      id: 'plan.smaller-range',
      with: { from: '172.23.40.2', to: '172.23.40.55', count: 54 },
    });
  });

  it('is a larger network where no range would do, or none is known', () => {
    for (const dhcp of [range(2, 60), undefined]) {
      const lines = roomLines(at(1), MASK, dhcp, [range(1, 1)], 2, 100);
      expect(lines[1]).toEqual({ id: 'plan.too-small', with: { most: 61 } });
    }
  });

  it('is not asked for where every camera has an address', () => {
    expect(roomLines(at(1), MASK, range(2, 60), [range(1, 1)], 2, 0)).toEqual([]);
  });

  it('gives each camera an address when reckoned again, and is the widest range that does', () => {
    const host = fc.integer({ min: 1, max: 62 });
    const site = fc.record({
      ends: fc.tuple(fc.integer({ min: -3, max: 66 }), fc.integer({ min: -3, max: 66 })),
      known: fc.array(host, { maxLength: 10 }),
      count: fc.integer({ min: 1, max: 62 }),
    });
    fc.assert(
      fc.property(site, ({ ends, known, count }) => {
        const dhcp = range(Math.min(...ends), Math.max(...ends));
        const cameras = Array.from({ length: count }, (_, n) => `Camera ${n}`);
        const plan = { router: at(1), mask: MASK, known: known.map(at), cameras, defaultAddress: undefined };
        const missing = addressPlan({ ...plan, dhcp }).value.without.length;
        fc.pre(missing > 0);
        const used = [1, ...known].map((one) => range(one, one));
        const smaller = smallerRange(at(1), MASK, dhcp, used, missing);
        if (smaller === undefined) {
          const lowest = { from: Math.max(dhcp.from, BASE + 1), to: Math.max(dhcp.from, BASE + 1) };
          expect(addressPlan({ ...plan, dhcp: lowest }).value.without.length).toBeGreaterThan(0);
          return;
        }
        expect(smaller.from).toBeGreaterThan(BASE);
        expect(addressPlan({ ...plan, dhcp: smaller }).value.without).toEqual([]);
        const wider = { ...smaller, to: smaller.to + 1 };
        expect(addressPlan({ ...plan, dhcp: wider }).value.without.length).toBeGreaterThan(0);
      }),
    );
  });
});
