import { expect, test } from 'vitest';
import { nameOf } from '../../src/call/adapter-name.js';
import { adapter } from '../intake/made.js';

test('an adapter is called by its name, in marks of its own only', () => {
  expect(nameOf(adapter('172.23.40.5/24', 1, { name: 'Ethernet 2' }))).toBe('"Ethernet 2"');
  expect(nameOf(adapter('172.23.40.5/24', 1, { name: 'the "new" one' }))).toBe('"the new one"');
});

test('without a name it is called by its first address', () => {
  const two = [...adapter('172.23.40.5/24', 1).addresses, ...adapter('10.77.5.9/24', 2).addresses];
  expect(nameOf(adapter('', 1, { addresses: two }))).toBe('the adapter at 172.23.40.5');
});

test.each([
  ['computer', 'Computer'],
  ['phone', 'Phone'],
  ['camera', 'Camera'],
  ['router', 'Router'],
] as const)('without either it is called after the %s it belongs to', (owner, words) => {
  expect(nameOf(adapter('', 1, { owner }))).toBe(words);
});
