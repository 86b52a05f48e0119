import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CodePage, characterOf, upperByteOf } from '../../src/intake/code-pages.js';
import { repaired } from '../../src/intake/repaired.js';

function utf8ReadAs(text: string, page: CodePage): string {
  return Array.from(new TextEncoder().encode(text), (byte) => characterOf(byte, page)).join('');
}

function writtenAndReadAs(text: string, written: CodePage, read: CodePage): string {
  return [...text]
    .map((character) => {
      const byte = upperByteOf(character, written);
      return byte === undefined ? character : characterOf(byte, read);
    })
    .join('');
}

const TEXTS = [
  'Größe der Übertragung: für Öffner und Äste, Maß',
  'Masque de sous-réseau\u00a0: 255.255.255.0, hôte, là, ça, où',
  'Dirección física, contraseña, máscara, ¿sí?',
  'Configuração automática, não, Endereço físico',
  'Maska podsieci, ważność, łącze, źródło, część, sieć',
  'Ağ geçidi, alt ağ maskesi, şifre, ışık',
  'Маска подсети, Основной шлюз, адаптер беспроводной сети',
  '子网掩码：255.255.255.0，默认网关',
  'サブネット マスク、デフォルト ゲートウェイ',
  '“quoted” – and … so on',
];

describe('UTF-8 that was read in another code page is mended', () => {
  test.each(TEXTS)('%s', (text) => {
    expect(repaired(utf8ReadAs(text, '1252'))).toBe(text);
    expect(repaired(utf8ReadAs(text, '850'))).toBe(text);
  });

  test.each(TEXTS.slice(0, 4))('twice over: %s', (text) => {
    expect(repaired(utf8ReadAs(utf8ReadAs(text, '1252'), '1252'))).toBe(text);
  });
});

describe('one western code page that was read as the other is mended', () => {
  test.each([
    'Übertragung für die Größe',
    'Masque de sous-réseau. . . : 255.255.255.0\nPasserelle par défaut. . . :',
    'Máscara de subred, Dirección física',
  ])('%s', (text) => {
    expect(repaired(writtenAndReadAs(text, '850', '1252'))).toBe(text);
  });

  test('also the other way round', () => {
    expect(repaired('Gr÷▀e der ▄bertragung f³r alle')).toBe('Größe der Übertragung für alle');
  });

  test('the blank that French puts before a colon comes back as one', () => {
    expect(repaired('Adresse IPv4ÿ. . . . : 172.23.40.57')).toBe('Adresse IPv4\u00a0. . . . : 172.23.40.57');
  });
});

describe('what was read rightly stays', () => {
  test.each([
    ...TEXTS,
    'MANHÃ»',
    'la «MANHÃ» en français',
    'CAFÉ»',
    '├── intake\n│   └── clean',
    'NÃO, AÇÃO, MÃE',
    '5 m³ ± 2 %, 20 °C, 10 £, ½',
    'l’adresse – d’après',
    'DRÄNGEN, ÖFFNEN, ÜBEN',
    'Ã',
    'plain',
    'Maße für x£y',
  ])('%s', (text) => {
    expect(repaired(text)).toBe(text);
  });
});

test('the lines stay the same, whatever comes', () => {
  const ends = /\r?\n|[\r\u2028\u2029\u0085]/;
  const piece = fc.oneof(
    fc.constantFrom('â€¨', 'Â…', 'Ã¤', '\n', '‚', 'r‚s', 'ÔÇ¿'),
    fc.string({ unit: 'grapheme' }),
  );
  fc.assert(
    fc.property(fc.array(piece), (pieces) => {
      const text = pieces.join('');
      expect(repaired(text).split(ends).length).toBe(text.split(ends).length);
    }),
  );
});
