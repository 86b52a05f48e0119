import { expect, test } from 'vitest';
import { givenAddress } from '../../src/call/given-address.js';

test('an address as typed, nothing for an empty line or 0.0.0.0, and the reason for any other text', () => {
  expect(givenAddress(' 172.23.40.57 ')).toMatchObject({ ok: true, value: { kind: 'ipv4' } });
  expect(givenAddress('  ')).toEqual({ ok: true, value: undefined });
  expect(givenAddress('0.0.0.0')).toEqual({ ok: true, value: undefined });
  expect(givenAddress('172.23.40').ok).toBe(false);
});
