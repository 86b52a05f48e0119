import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keptText } from '../../src/call/kept-text.js';

describe('what a record keeps of a text', () => {
  test.each([
    ['with dashes', '02-00-5E-10-00-57', 'xx-xx-xx-xx-00-57'],
    ['with colons', '02:00:5e:10:00:57', 'xx:xx:xx:xx:00:57'],
    ['as macOS shortens it', '2:0:5e:10:0:57', 'x:x:xx:x0:0:57'],
    ['in fours', '0200.5e10.0057', 'xxxx.xxxx.0057'],
    ['behind its name and a colon', 'mac:02:00:5e:10:00:57', 'mac:xx:xx:xx:xx:00:57'],
    ['in an identifier of DHCP', '01:02:00:5e:10:00:57', 'xx:xx:xx:xx:xx:00:57'],
    ['in a longer one', '00:01:00:01:2a:11:22:33:02:00:5e:10:00:57', `${'xx:'.repeat(12)}00:57`],
    ['in an address of its own making', 'fe80::200:5eff:fe10:57', 'fe80::x:x:x:57'],
    ['in an address for the internet', '2001:db8::200:5eff:fe10:57', '2001:x::x'],
  ])('hides a MAC address %s', (_, given, kept) => {
    expect(keptText(`eth0 ${given} up`)).toBe(`eth0 ${kept} up`);
  });

  test.each(['Serial number: DEMO20417733', 'S/N DEMO-2041-7733'])(
    'hides the serial number in %j',
    (text) => {
      expect(keptText(text)).toMatch(/xxxx7733$/);
      expect(keptText(text)).not.toContain('2041');
    },
  );

  test.each([
    'IPv4 Address. . . : 172.23.40.57(Preferred)',
    'outside 203.0.113.9, name server 2001:db8::53',
    'Lease Obtained. . : Wednesday, 25 November 2026 08:14:02',
    '64 bytes from 172.23.40.57: icmp_seq=1 ttl=64 time=0.512 ms',
    'mask 255.255.255.0 sn 255.255.255.0',
    'inet6 2001:db8:0:1:2:3:4:57/64',
  ])('leaves %j as it is', (text) => {
    expect(keptText(text)).toBe(text);
  });

  test('is 64,000 characters at most, in whole lines', () => {
    const line = `${'x'.repeat(99)}\n`;
    expect(keptText(line.repeat(640))).toBe(line.repeat(640));
    expect(keptText(`${line.repeat(639)}${'y'.repeat(200)}`)).toBe(line.repeat(639).trimEnd());
    expect(keptText(`${line.replace('\n', '\r').repeat(639)}${'y'.repeat(200)}`)).toBe(
      line.replace('\n', '\r').repeat(639).trimEnd(),
    );
    expect(keptText('z'.repeat(70_000))).toHaveLength(64_000);
  });

  test('cuts no MAC address in two, which would leave a part of it legible', () => {
    const mac = '02-00-5e-10-00-57';
    const text = `${`${mac}\n`.repeat(4000)}`;
    expect(keptText(text)).not.toContain('5e');
  });

  const piece = fc.oneof(
    fc.constantFrom(
      '02-00-5e-10-00-57',
      'serial number A12345',
      '\r\n',
      '\n',
      '\r',
      '\u2028',
      ' ',
      'fe80::1',
      '::',
    ),
    fc.string({ maxLength: 6 }),
  );
  const places = (text: string): readonly string[] => text.match(/\r\n|[\r\n\u2028\u2029]/g) ?? [];

  test('loses and moves no line, and hides no more when it is done twice', () => {
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 30 }), (pieces) => {
        const text = pieces.join(' ');
        const kept = keptText(text);
        expect(places(kept)).toEqual(places(text));
        expect(kept).not.toContain('02-00-5e-10');
        expect(places(keptText(kept))).toEqual(places(kept));
      }),
    );
  });
});
