import { describe, expect, test } from 'vitest';
import { sameRange } from '../../src/arithmetic/same-range.js';
import { address, mask, words } from './given.js';

// RFC 1122, section 3.3.1.1, with the router's mask.
describe('whether the camera is in the range of the router', () => {
  test.each([
    ['172.23.40.57', '172.23.40.1', '/24', 'same', '172.23.40.57 is inside it.'],
    ['172.23.40.57', '10.77.5.1', '/24', 'other', '172.23.40.57 is outside it.'],
    ['172.23.41.57', '172.23.40.1', '/24', 'other', '172.23.41.57 is outside it.'],
    ['172.23.41.57', '172.23.40.1', '/23', 'same', '172.23.41.57 is inside it.'],
    ['0.0.0.0', '172.23.40.1', '/0', 'other', 'The address is empty (0.0.0.0).'],
  ])('camera %s, router %s %s: %s', (camera, router, routerMask, value, verdict) => {
    const worked = sameRange(address(camera), address(router), mask(routerMask));
    expect(worked.value).toBe(value);
    expect(words(worked.lines).at(-1)).toBe(verdict);
  });
});
