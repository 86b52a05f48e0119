import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import { parseMask, showMask } from '../../src/values/mask.js';
import { published } from '../arithmetic/references.js';

/** The prefix, or the id of the problem. */
function read(text: string): number | string {
  const parsed = parseMask(text);
  return parsed.ok ? parsed.value.prefix : parsed.problem.id;
}

function complaint(text: string): string {
  const parsed = parseMask(text);
  return parsed.ok ? 'no complaint' : inWords(parsed.problem);
}

describe('a typed mask', () => {
  test.each([
    '255.255.255.0',
    '/24',
    '24',
    '/ 24',
    ' /24. ',
    '255,255,255,0',
    '255 255 255 0',
    '"255.255.255.0"',
    '/255.255.255.0',
    '２５５．２５５．２５５．０',
    '／２４',
    '0xffffff00',
    '0xFFFFFF00',
  ])('is /24 for %j', (text) => {
    expect(read(text)).toBe(24);
  });

  // Worked out from RFC 4632, section 3.1 (from memory): masks with all their ones in front, and others.
  test.each(published<{ mask: string; valid: boolean; prefix: number | null }[]>('a-mask-table'))(
    'follows the contiguity rule for $mask',
    ({ mask, valid, prefix }) => {
      expect(typeof read(mask)).toBe(valid ? 'number' : 'string');
      if (valid) expect(read(mask)).toBe(prefix);
    },
  );

  // RFC 1860 (replaced by 1878), mask table, /19 to /30; course worksheet, question 2; RFC 4632, 3.1.
  test.each([
    ...Object.entries(published<Record<string, string>>('b-1860-masktable')),
    ['/14', '255.252.0.0'],
    ...Object.entries(published<{ examples: Record<string, number> }>('a-4632-contiguous').examples).map(
      ([mask, prefix]) => [`/${prefix}`, mask],
    ),
  ])('%s and %s are one mask', (prefix, dotted) => {
    const parsed = parseMask(String(prefix));
    expect(parsed.ok && showMask(parsed.value)).toBe(dotted);
    expect(read(String(dotted))).toBe(Number(String(prefix).slice(1)));
  });

  test('the worksheet row used above is the published one', () => {
    expect(published('b-252-14')).toEqual({ mask: '255.252.0.0', prefix: 14 });
  });

  test.each([
    ['', 'typed.empty'],
    ['/', 'typed.empty'],
    ['33', 'typed.prefix-too-big'],
    ['255', 'typed.prefix-too-big'],
    ['/99999999999999999999', 'typed.prefix-too-big'],
    ['024', 'typed.prefix-leading-zero'],
    ['255.255.255', 'typed.mask-few'],
    ['255.255.255.0.0', 'typed.mask-many'],
    ['255.255.255.256', 'typed.octet-too-big'],
    ['255.255.255.00', 'typed.leading-zero'],
    ['255.255.225.0', 'typed.mask-number'],
    ['255.255.255.1', 'typed.mask-number'],
    ['255.0.255.0', 'typed.mask-order'],
    ['255.255.254.255', 'typed.mask-order'],
    ['0.0.0.255', 'typed.mask-inverted'],
    ['172.23.40.57', 'typed.address-as-mask'],
    ['10.77.5.0', 'typed.address-as-mask'],
    ['172.23.40.57/24', 'typed.mask-with-address'],
    ['172.23.40.57/255.255.255.0', 'typed.mask-with-address'],
    ['full', 'typed.mask-letters'],
    ['0xffff', 'typed.mask-letters'],
    ['255.255.255.O', 'typed.letter-for-digit'],
    ['-24', 'typed.stray'],
    ['255..255.0', 'typed.gap'],
    ['255.255.255 0', 'typed.space-inside'],
  ])('%j is refused: %s', (text, id) => {
    expect(read(text)).toBe(id);
  });

  test.each([
    [
      '255.255.225.0',
      'In "255.255.225.0" number 3 is 225, which cannot stand in a mask. It must be one of 255, 254, 252, 248, 240, 224, 192, 128 or 0. Read the mask again.',
    ],
    ['0.0.0.255', '"0.0.0.255" is a mask turned inside out. Type it the other way round: 255.255.255.0.'],
    ['172.23.40.57/24', '"172.23.40.57/24" is more than a mask. Type only the mask here: 24.'],
    ['33', 'The mask /33 is too big. The number after the slash is 0 to 32, such as /24.'],
    ['024', 'The mask /024 begins with a nought. Write /24 instead.'],
  ])('says what was wrong with %s and what to write', (text, sentence) => {
    expect(complaint(text)).toBe(sentence);
  });
});

describe('a typed mask, for any four numbers', () => {
  test('is accepted exactly when ipaddr.js finds a prefix in it', () => {
    const octet = fc.oneof(
      fc.constantFrom(255, 254, 252, 248, 240, 224, 192, 128, 0),
      fc.integer({ min: 0, max: 255 }),
    );
    fc.assert(
      fc.property(fc.tuple(octet, octet, octet, octet), (octets) => {
        const text = octets.join('.');
        const theirs = ipaddr.IPv4.parse(text).prefixLengthFromSubnetMask();
        const parsed = parseMask(text);
        expect(`${text} ${parsed.ok ? parsed.value.prefix : null}`).toBe(`${text} ${theirs}`);
      }),
      { numRuns: 5_000 },
    );
  });

  test('is read back as it is shown, for each of the 33', () => {
    for (let prefix = 0; prefix <= 32; prefix += 1) {
      expect(read(showMask({ kind: 'mask', prefix }))).toBe(prefix);
      expect(read(`/${prefix}`)).toBe(prefix);
    }
  });
});
