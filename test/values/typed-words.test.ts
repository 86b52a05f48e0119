import { describe, expect, test } from 'vitest';
import { TYPED_WORDS } from '../../src/messages/english/typed.js';
import { inWords, type MessageId } from '../../src/messages/say.js';
import { parseAddress, parseAddressWithMask } from '../../src/values/address.js';
import { parseMask } from '../../src/values/mask.js';
import { parseNumber } from '../../src/values/quantity.js';
import type { Result } from '../../src/values/result.js';

const metres = (text: string): Result<number> => parseNumber(text, 'm', 1, 9000);
const count = (text: string): Result<number> => parseNumber(text, '', 1, 9000);

/** One text for every sentence of refusal. */
const REFUSALS: readonly (readonly [MessageId, (text: string) => Result<unknown>, string])[] = [
  ['typed.empty', parseAddress, ''],
  ['typed.too-long', parseAddress, '1'.repeat(300)],
  ['typed.address-few', parseAddress, '172.23'],
  ['typed.address-many', parseAddress, '172.23.40.57.1'],
  ['typed.address-letters', parseAddress, 'the camera'],
  ['typed.address-with-mask', parseAddress, '172.23.40.57/24'],
  ['typed.address-with-port', parseAddress, '172.23.40.57:80'],
  ['typed.mask-as-address', parseAddress, '255.255.0.0'],
  ['typed.web-address', parseAddress, 'http://172.23.40.57'],
  ['typed.ipv6', parseAddress, 'fe80::1'],
  ['typed.mac', parseAddress, '02:00:5e:10:00:01'],
  ['typed.mask-few', parseMask, '255.255'],
  ['typed.mask-many', parseMask, '255.255.255.0.0'],
  ['typed.mask-letters', parseMask, 'the usual'],
  ['typed.mask-with-address', parseMask, '172.23.40.57/24'],
  ['typed.mask-missing', parseAddressWithMask, '172.23.40.57'],
  ['typed.address-as-mask', parseMask, '172.23.40.57'],
  ['typed.mask-inverted', parseMask, '0.0.0.255'],
  ['typed.mask-number', parseMask, '255.255.225.0'],
  ['typed.mask-order', parseMask, '255.0.255.0'],
  ['typed.prefix-too-big', parseMask, '/33'],
  ['typed.prefix-leading-zero', parseMask, '/08'],
  ['typed.octet-too-big', parseAddress, '172.23.40.256'],
  ['typed.leading-zero', parseAddress, '172.23.40.057'],
  ['typed.gap', parseAddress, '172..23.40'],
  ['typed.space-inside', parseAddress, '172.23.4 0.57'],
  ['typed.letter-for-digit', parseAddress, '172.23.4O.57'],
  ['typed.stray', parseAddress, '172-23-40-57'],
  ['typed.number-unclear', metres, 'far'],
  ['typed.number-unclear-plain', count, 'many'],
  ['typed.number-outside', metres, '0'],
  ['typed.number-outside-plain', count, '0'],
  ['typed.number-two-readings', metres, '1,000'],
  ['typed.unit-other', metres, '30 ft'],
  ['typed.unit-needless', count, '30 m'],
];

describe('the sentences of refusal', () => {
  test.each(REFUSALS)('%s is said, with every blank filled', (id, parse, text) => {
    const parsed = parse(text);
    if (parsed.ok) throw new Error(`accepted ${text}`);
    expect(parsed.problem.id).toBe(id);
    expect(inWords(parsed.problem)).not.toMatch(/undefined|NaN|\{/);
  });

  test('are all of use', () => {
    expect(REFUSALS.map(([id]) => id).sort()).toEqual(Object.keys(TYPED_WORDS).sort());
  });
});
