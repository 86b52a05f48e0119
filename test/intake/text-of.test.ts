import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CodePage, characterOf, upperByteOf } from '../../src/intake/code-pages.js';
import { textOf } from '../../src/intake/text-of.js';
import { yardsOf } from '../timing/yards.js';

function utf16(text: string, isLittle: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  for (let at = 0; at < text.length; at++) view.setUint16(at * 2, text.charCodeAt(at), isLittle);
  return new Uint8Array(view.buffer);
}

function written(text: string, page: CodePage): Uint8Array {
  return Uint8Array.from(text, (character) =>
    character < '\u0080' ? character.charCodeAt(0) : (upperByteOf(character, page) ?? Number.NaN),
  );
}

const IPCONFIG = '   IPv4 地址 . . . . . . . . . . . . : 172.23.40.57(首选)\r\n';

describe('the text of a file', () => {
  test.each([
    ['UTF-8', new TextEncoder().encode(IPCONFIG)],
    ['UTF-8 with a mark', new TextEncoder().encode(`\ufeff${IPCONFIG}`)],
    ['UTF-16, low byte first, with a mark', utf16(`\ufeff${IPCONFIG}`, true)],
    ['UTF-16, high byte first, with a mark', utf16(`\ufeff${IPCONFIG}`, false)],
    ['UTF-16, low byte first', utf16(IPCONFIG, true)],
    ['UTF-16, high byte first', utf16(IPCONFIG, false)],
  ])('is read from %s', (_, bytes) => {
    expect(textOf(bytes)).toBe(IPCONFIG);
  });

  test('is read where it was cut within its last character', () => {
    const bytes = new TextEncoder().encode('Größe ä');
    expect(textOf(bytes.subarray(0, -1))).toBe('Größe ');
  });

  test('keeps a file that ends on a longer character cut twice', () => {
    const bytes = new TextEncoder().encode('地址地');
    expect(textOf(bytes.subarray(0, -2))).toBe('地址');
  });

  const WESTERN = [
    'Drahtlos-LAN-Adapter: Übertragung für die Größe, Schlüssel ändern',
    'Masque de sous-réseau. . . : 255.255.255.0\r\nPasserelle par défaut. . . : 172.23.40.1 (préféré)',
    'Máscara de subred: 255.255.255.0, Dirección física, Configuración automática habilitada: sí',
    'Configuração automática, Máscara de Sub-rede, Endereço físico, Não',
    'Indirizzo IPv4 già in uso: connettività limitata, perché no',
    'Sträng för nätverk på svenska',
  ];
  test.each(WESTERN)('is told apart in the western code pages: %s', (text) => {
    expect(textOf(written(text, '850'))).toBe(text);
    expect(textOf(written(text, '1252'))).toBe(text);
  });

  test('is empty for no bytes', () => {
    expect(textOf(new Uint8Array())).toBe('');
  });

  test('never throws, and five megabytes take no longer than they should', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(typeof textOf(bytes)).toBe('string');
      }),
    );
    const large = written('Größe der Übertragung: 172.23.40.57 für alle\r\n'.repeat(110_000), '850');
    expect(textOf(large).slice(0, 5)).toBe('Größe');
    // 31 to 42 yards were measured.
    expect(yardsOf(() => textOf(large), 90)).toBeLessThan(90);
  });
});

// The decoder of Node 20 reads these as 8859-1, so the index stands here.
test('code page 1252 is that of the browsers (WHATWG Encoding, index windows-1252)', () => {
  const index = [
    0x20ac, 0x81, 0x201a, 0x192, 0x201e, 0x2026, 0x2020, 0x2021, 0x2c6, 0x2030, 0x160, 0x2039, 0x152, 0x8d,
    0x17d, 0x8f, 0x90, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x2dc, 0x2122, 0x161, 0x203a,
    0x153, 0x9d, 0x17e, 0x178,
  ];
  for (let byte = 0; byte < 256; byte++) {
    const expected = byte >= 0x80 && byte < 0xa0 ? index[byte - 0x80] : byte;
    expect(characterOf(byte, '1252').charCodeAt(0)).toBe(expected);
  }
});

test('every byte of both code pages has a character of its own', () => {
  for (const page of ['850', '1252'] as const) {
    const characters = new Set(Array.from({ length: 256 }, (_, byte) => characterOf(byte, page)));
    expect(characters.size).toBe(256);
  }
});
