import { describe, expect, test } from 'vitest';
import { FAULTS, HEALTHY, PAIRS } from '../faults/faults.js';
import type { Tried } from '../types.js';
import { TRIED_SHARES, TRIED_SHARES_NEW, triedBefore } from './tried-before.js';

const IDS = [...FAULTS, ...PAIRS, HEALTHY].map(({ id }) => id);
const KINDS: readonly Tried[] = ['camera', 'router', 'phone'];

describe('what callers did before ringing', () => {
  test('is the same for the same fault, and not the same for all', () => {
    const drawn = () => IDS.map((id) => triedBefore(id, []).join());
    expect(drawn()).toEqual(drawn());
    expect(new Set(drawn()).size).toBeGreaterThan(4);
  });

  test.each([
    ['restart-camera', 'camera'],
    ['reseat-lead', 'camera'],
    ['restart-router', 'router'],
  ] as const)('where %s mends, nobody has done it, and the rest stays as drawn', (mend, kind) => {
    for (const id of IDS)
      for (const everWorked of [true, false]) {
        const rest = triedBefore(id, [], everWorked).filter((one) => one !== kind);
        expect(triedBefore(id, ['fetch-address', mend], everWorked)).toEqual(rest);
      }
  });

  test('of a pair, what mends either part is left out', () => {
    for (const { id } of PAIRS)
      expect(['', 'phone']).toContain(triedBefore(id, ['restart-camera', 'restart-router']).join());
  });

  test.each([
    ['that went dark', true, TRIED_SHARES],
    ['that never worked', false, TRIED_SHARES_NEW],
  ] as const)('comes near the judged shares over all faults, for a camera %s', (_, everWorked, shares) => {
    for (const kind of KINDS) {
      const count = IDS.filter((id) => triedBefore(id, [], everWorked).includes(kind)).length;
      expect(Math.abs((100 * count) / IDS.length - shares[kind])).toBeLessThan(15);
    }
  });
});
