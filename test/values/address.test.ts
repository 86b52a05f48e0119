import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import { isBlank, parseAddress, parseAddressWithMask, showAddress } from '../../src/values/address.js';
import { showMask } from '../../src/values/mask.js';

/** The address in dotted form, or the id of the problem. */
function read(text: string): string {
  const parsed = parseAddress(text);
  return parsed.ok ? showAddress(parsed.value) : parsed.problem.id;
}

function complaint(text: string): string {
  const parsed = parseAddress(text);
  return parsed.ok ? 'no complaint' : inWords(parsed.problem);
}

function readBoth(text: string): string {
  const parsed = parseAddressWithMask(text);
  if (!parsed.ok) return parsed.problem.id;
  return `${showAddress(parsed.value.address)} ${showMask(parsed.value.mask)}`;
}

describe('a typed address', () => {
  test.each([
    '172.23.40.57',
    '  172.23.40.57\t',
    '172.23.40.57.',
    '172.23.40.57,',
    '172,23,40,57',
    '172 . 23 . 40 . 57',
    '172, 23, 40, 57',
    '172 23 40 57',
    '172.23.40,57',
    '"172.23.40.57"',
    '“172.23.40.57”',
    "'172.23.40.57",
    '172.23.40.57/',
    '１７２．２３．４０．５７',
    '172。23。40。57',
    '\u00a0172.23.40.57\u00a0',
    '172.23.\u200b40.57\ufeff',
    '\u202a172.23.40.57\u202c',
    '172.23.40.57\r\n',
  ])('is read from %j', (text) => {
    expect(read(text)).toBe('172.23.40.57');
  });

  test.each(['empty', 'Blank', ' NONE ', '-', '–', '0.0.0.0', '"empty"'])('is 0.0.0.0 for %j', (text) => {
    const parsed = parseAddress(text);
    expect(parsed.ok && isBlank(parsed.value)).toBe(true);
  });

  // Each has all its ones in front, yet only what begins with 255 is surely meant as a mask.
  test.each(['128.0.0.0', '192.0.0.0', '224.0.0.0', '254.0.0.0'])('may be %s', (text) => {
    expect(read(text)).toBe(text);
  });

  test('is not blank when only its first numbers are 0', () => {
    const parsed = parseAddress('0.0.0.1');
    expect(parsed.ok && !isBlank(parsed.value)).toBe(true);
  });

  test.each([
    // typed                    problem
    ['', 'typed.empty'],
    [' \u200b \u00a0', 'typed.empty'],
    ['...', 'typed.empty'],
    ['172.23.40', 'typed.address-few'],
    ['57', 'typed.address-few'],
    ['2887198777', 'typed.address-few'],
    ['172.23.40.57.1', 'typed.address-many'],
    ['172.23.40.256', 'typed.octet-too-big'],
    ['172.23.40.2887198777', 'typed.octet-too-big'],
    ['172.23.010.57', 'typed.leading-zero'],
    ['172.23.40.00', 'typed.leading-zero'],
    ['172..40.57', 'typed.gap'],
    ['.172.23.40.57', 'typed.gap'],
    ['1 72.23.40.57', 'typed.space-inside'],
    ['172.23.40 57', 'typed.space-inside'],
    ['172.23.4O.57', 'typed.letter-for-digit'],
    ['l72.23.40.57', 'typed.letter-for-digit'],
    ['camera.example', 'typed.address-letters'],
    ['172.23.40.57(Preferred)', 'typed.address-letters'],
    ['0x7f.1.1.1', 'typed.address-letters'],
    ['172-23-40-57', 'typed.stray'],
    ['172.23.40.-1', 'typed.stray'],
    ['255.255.255.0', 'typed.mask-as-address'],
    ['255.255.255.255', 'typed.mask-as-address'],
    ['172.23.40.57/24', 'typed.address-with-mask'],
    ['172.23.40.57 255.255.255.0', 'typed.address-with-mask'],
    ['172.23.400.57/24', 'typed.octet-too-big'],
    ['172.23.40.57:8080', 'typed.address-with-port'],
    ['http://172.23.40.57/', 'typed.web-address'],
    ['2001:db8::57', 'typed.ipv6'],
    ['[fe80::1]', 'typed.ipv6'],
    ['fe80::1%eth0', 'typed.ipv6'],
    ['fe80::1/64', 'typed.ipv6'],
    ['2001:db8:0:0:0:0:0:1', 'typed.ipv6'],
    ['::ffff:172.23.40.57', 'typed.ipv6'],
    ['02:00:5e:10:00:01', 'typed.mac'],
    ['02-00-5E-10-00-01', 'typed.mac'],
    ['0200.5e10.0001', 'typed.mac'],
    ['12:30', 'typed.stray'],
    ['/24', 'typed.mask-as-address'],
    ['24', 'typed.address-few'],
  ])('%j is refused: %s', (text, id) => {
    expect(read(text)).toBe(id);
  });

  test.each([
    [
      '172.23.40.300',
      'In "172.23.40.300" number 4 is 300. None of the four numbers can be over 255. Read that number again.',
    ],
    [
      '172.23.010.57',
      'In "172.23.010.57" number 3 is written 010. Some programs take a nought in front for another way of counting. Write 10 instead.',
    ],
    ['172.23.4O.57', '"172.23.4O.57" has the letter O in it. Type the digit 0 in its place.'],
    [
      '172.23.40.57/24',
      '"172.23.40.57/24" is an address and a mask together. Type only the address here: 172.23.40.57.',
    ],
    [
      '172.23.40.57:8080',
      '"172.23.40.57:8080" is an address and a port together. Type only what stands before the colon: 172.23.40.57.',
    ],
    [
      '172.23.40',
      '"172.23.40" has only 3 of the four numbers of an address. Type all four with dots between them, such as 172.23.40.57.',
    ],
  ])('says what was wrong with %s, where, and what to write', (text, sentence) => {
    expect(complaint(text)).toBe(sentence);
  });

  test('is quoted back without control and direction characters', () => {
    expect(complaint('\u202ecam\u0007era\u001b[31m')).toMatch(/^"camera\[31m" has the letter c/);
  });
});

describe('a typed address, for any text', () => {
  // ipaddr.js: isValid() also takes 010 as octal and one bare number; isValidFourPartDecimal() does not.
  test('is accepted exactly when ipaddr.js sees four plain numbers and no mask', () => {
    const octet = fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: 0, max: 300 }).map(String) },
      { weight: 1, arbitrary: fc.integer({ min: 0, max: 99 }).map((number) => `0${number}`) },
      { weight: 1, arbitrary: fc.constantFrom('', '255', '0x10', '00', '-1') },
    );
    const dotted = fc.oneof(
      { weight: 8, arbitrary: fc.array(octet, { minLength: 4, maxLength: 4 }) },
      { weight: 1, arbitrary: fc.array(octet, { minLength: 1, maxLength: 6 }) },
    );
    let accepted = 0;
    fc.assert(
      fc.property(dotted, (octets) => {
        const text = octets.join('.');
        // A dot at the end is forgiven here, and there not.
        fc.pre(!text.endsWith('.') && text !== '');
        const isPlain = ipaddr.IPv4.isValidFourPartDecimal(text);
        const isMask =
          isPlain && octets[0] === '255' && ipaddr.IPv4.parse(text).prefixLengthFromSubnetMask() !== null;
        const parsed = parseAddress(text);
        expect(`${text} ${parsed.ok}`).toBe(`${text} ${isPlain && !isMask}`);
        if (!parsed.ok) return;
        accepted += 1;
        expect(showAddress(parsed.value)).toBe(ipaddr.IPv4.parse(text).toString());
      }),
      { numRuns: 15_000 },
    );
    expect(accepted).toBeGreaterThan(1_000);
  });

  test('never throws and never gives more than 32 bits', () => {
    const piece = fc.constantFrom(
      '172',
      '.',
      ',',
      ' ',
      '/',
      ':',
      '::',
      '0',
      '255',
      '010',
      'l',
      'é',
      '\u200b',
      '"',
      '-',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary' }),
          fc.array(piece).map((it) => it.join('')),
        ),
        (text) => {
          const parsed = parseAddress(text);
          const both = parseAddressWithMask(text);
          if (!parsed.ok) expect(inWords(parsed.problem)).not.toMatch(/\p{Cc}|\p{Cf}|\p{Cs}/u);
          if (!both.ok) expect(inWords(both.problem)).not.toMatch(/\p{Cc}|\p{Cf}|\p{Cs}/u);
          const value = parsed.ok ? parsed.value.bits : 0;
          expect(Number.isInteger(value) && value >= 0 && value <= 0xffffffff).toBe(true);
        },
      ),
      { numRuns: 5_000 },
    );
  });

  test('is read back as it is shown', () => {
    // Whatever begins with 255 may be taken for a mask.
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xfeffffff }), (bits) => {
        expect(parseAddress(showAddress({ kind: 'ipv4', bits }))).toEqual({
          ok: true,
          value: { kind: 'ipv4', bits },
        });
      }),
      { numRuns: 5_000 },
    );
  });
});

describe('an address typed together with its mask', () => {
  test.each([
    '172.23.40.57/24',
    '172.23.40.57 / 24',
    '172.23.40.57/255.255.255.0',
    '172.23.40.57 255.255.255.0',
    '172.23.40.57, 255.255.255.0',
    '172,23,40,57/24',
    '"172.23.40.57/24".',
    '１７２．２３．４０．５７／２４',
  ])('is read from %j', (text) => {
    expect(readBoth(text)).toBe('172.23.40.57 255.255.255.0');
  });

  test.each([
    ['172.23.40.57', 'typed.mask-missing'],
    ['172.23.40.57/33', 'typed.prefix-too-big'],
    ['172.23.40.57/255.0.255.0', 'typed.mask-order'],
    ['172.23.40.257/24', 'typed.octet-too-big'],
    ['255.255.255.0/24', 'typed.mask-as-address'],
    ['172.23.40.57 172.23.40.1', 'typed.address-as-mask'],
    ['2001:db8::1/64', 'typed.ipv6'],
    ['/24', 'typed.mask-as-address'],
    ['', 'typed.empty'],
  ])('%j is refused: %s', (text, id) => {
    expect(readBoth(text)).toBe(id);
  });
});
