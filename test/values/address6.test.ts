import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import {
  address6Value,
  type Groups,
  lastAsIpv4,
  parseAddress6,
  showAddress6,
} from '../../src/values/address6.js';

/** The address as RFC 5952 writes it, or the id of the problem. */
function read(text: string): string {
  const parsed = parseAddress6(text);
  return parsed.ok ? showAddress6(parsed.value) : parsed.problem.id;
}

function groups(...given: Groups) {
  return { kind: 'ipv6', groups: given } as const;
}

describe('a typed IPv6 address', () => {
  test.each([
    '2001:db8::57',
    ' 2001:DB8:0:0::57. ',
    '[2001:db8::57]',
    '"2001:0db8:0000:0000:0000:0000:0000:0057"',
    '2001:db8::57%eth0',
    '2001:db8::0.0.0.87',
    '２００１：ｄｂ８：：５７',
  ])('is read from %j', (text) => {
    expect(read(text)).toBe('2001:db8::57');
  });

  test.each([
    ['', 'typed.empty'],
    ['172.23.40.57', 'typed.address6-is-ipv4'],
    ['02:00:5e:10:00:ff', 'typed.address6-is-mac'],
    ['02-00-5e-10-00-ff', 'typed.address6-is-mac'],
    ['2001:db8::57/64', 'typed.address6-with-length'],
    ['2001:db8::1::2', 'typed.address6-wrong'],
    ['2001:db8:1:2:3:4:5', 'typed.address6-wrong'],
    ['2001:db8:1:2:3:4:5:6:7', 'typed.address6-wrong'],
    ['2001:db8::57/', '2001:db8::57'],
    ['20010:db8::', 'typed.address6-wrong'],
    ['2001:db8::g', 'typed.address6-wrong'],
    [':::', 'typed.address6-wrong'],
    ['::1.2.3.400', 'typed.address6-wrong'],
    ['::01.2.3.4', 'typed.address6-wrong'],
    ['camera', 'typed.address6-wrong'],
    ['https://[2001:db8::57]/', 'typed.address6-wrong'],
  ])('%j gives %s', (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  test('is told what to write instead of an address with a prefix length', () => {
    const parsed = parseAddress6('2001:db8::57/64');
    expect(parsed.ok ? '' : inWords(parsed.problem)).toBe(
      '"2001:db8::57/64" is an address and the length of its network together. Type only the address here: 2001:db8::57.',
    );
  });
});

// RFC 5952, sections 4.1 to 4.3 and 5: the examples of the RFC, from memory.
describe('an IPv6 address as it is shown', () => {
  test.each([
    ['2001:0db8::0001', '2001:db8::1'],
    ['2001:db8:0:0:0:0:2:1', '2001:db8::2:1'],
    ['2001:db8:0:1:1:1:1:1', '2001:db8:0:1:1:1:1:1'],
    ['2001:0:0:1:0:0:0:1', '2001:0:0:1::1'],
    ['2001:db8:0:0:1:0:0:1', '2001:db8::1:0:0:1'],
    ['2001:DB8:AAAA::', '2001:db8:aaaa::'],
    ['0:0:0:0:0:0:0:0', '::'],
    ['0:0:0:0:0:0:0:1', '::1'],
    ['::ffff:c000:201', '::ffff:192.0.2.1'],
    ['64:ff9b::c000:221', '64:ff9b::192.0.2.33'],
    ['64:ff9b:1::c000:221', '64:ff9b:1::c000:221'],
  ])('%s becomes %s', (text, shown) => {
    expect(read(text)).toBe(shown);
  });
});

const anyGroup = fc.oneof(
  fc.constant(0),
  fc.constantFrom(1, 0xffff, 0x64, 0xff9b),
  fc.integer({ max: 0xffff, min: 0 }),
);
const anyGroups = fc.tuple(
  ...([anyGroup, anyGroup, anyGroup, anyGroup, anyGroup, anyGroup, anyGroup, anyGroup] as const),
);

describe('an IPv6 address, against ipaddr.js', () => {
  test('is written the same, and read back', () => {
    fc.assert(
      fc.property(anyGroups, (given) => {
        const shown = showAddress6(groups(...given));
        const theirs = new ipaddr.IPv6([...given]).toRFC5952String();
        expect(ipaddr.IPv6.parse(shown).toRFC5952String()).toBe(theirs);
        // The dotted end that RFC 5952, section 5, recommends is ours alone.
        if (!shown.includes('.')) expect(shown).toBe(theirs);
        expect(parseAddress6(shown)).toEqual({ ok: true, value: groups(...given) });
      }),
      { numRuns: 20_000 },
    );
  });

  test('is accepted and refused alike, for text made of its pieces', () => {
    const piece = fc.constantFrom('0', '1', 'db8', 'ffff', '2001', ':', ':', '::', '1.2.3.4', '10000', 'g');
    fc.assert(
      fc.property(fc.array(piece, { minLength: 3, maxLength: 18 }), (pieces) => {
        const text = pieces.join('');
        // ipaddr.js takes a nought in front for octal; we refuse it, as in IPv4 (RFC 6943, section 3.1.1).
        const isOctal = /(?:^|[:.])0\d+\.|\.0\d/.test(text);
        const isIpv6 = ipaddr.IPv6.isValid(text) && text.includes(':') && !isOctal;
        expect(`${text} ${parseAddress6(text).ok}`).toBe(`${text} ${isIpv6}`);
      }),
      { numRuns: 20_000 },
    );
  });

  test('is the same number', () => {
    fc.assert(
      fc.property(anyGroups, (given) => {
        const bytes = new ipaddr.IPv6([...given]).toByteArray();
        const theirs = bytes.reduce((sum, byte) => sum * 256n + BigInt(byte), 0n);
        expect(address6Value(groups(...given))).toBe(theirs);
        expect(BigInt(lastAsIpv4(groups(...given)).bits)).toBe(theirs % 2n ** 32n);
      }),
      { numRuns: 3_000 },
    );
  });
});
