import { describe, expect, test } from 'vitest';
import { gatewayIsRouter } from '../../src/arithmetic/gateway-is-router.js';
import { address, words } from './given.js';

describe('whether the gateway is the router', () => {
  test.each([
    ['172.23.40.1', '172.23.40.1', 'router', 'The default gateway 172.23.40.1 is the router.'],
    [
      '172.23.40.2',
      '172.23.40.1',
      'another',
      'The default gateway is 172.23.40.2. The router is 172.23.40.1.',
    ],
    [
      '0.0.0.0',
      '0.0.0.0',
      'another',
      'The default gateway is empty (0.0.0.0). Nothing can leave the local network.',
    ],
  ])('gateway %s, router %s: %s', (gateway, router, value, line) => {
    const worked = gatewayIsRouter(address(gateway), address(router));
    expect(worked.value).toBe(value);
    expect(words(worked.lines)).toEqual([line]);
  });
});
