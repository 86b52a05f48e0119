import { describe, expect, test } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import { parseAddress, parseAddressWithMask } from '../../src/values/address.js';
import { parseMask } from '../../src/values/mask.js';
import { parseNumber } from '../../src/values/quantity.js';
import type { Result } from '../../src/values/result.js';
import { quoted, tidy } from '../../src/values/tidy.js';
import { bestMilliseconds } from '../timing/times-as-long.js';

describe('typed text, tidied', () => {
  test.each([
    ['  one \t\n two  ', 'one two'],
    ['ＡＢ／２４．', 'AB/24.'],
    ['a\u200bb\u2060c\ufeff', 'abc'],
    ['a\u202eb\u0000c\u0007', 'abc'],
    ['a \u200b b', 'a b'],
    ['\u00a0a\u3000b', 'a b'],
  ])('%j becomes %j', (text, tidied) => {
    expect(tidy(text)).toEqual({ ok: true, value: tidied });
  });

  test('may have 200 characters and not 201', () => {
    expect(tidy('a'.repeat(200)).ok).toBe(true);
    expect(tidy('a'.repeat(201)).ok).toBe(false);
  });
});

describe('typed text, quoted', () => {
  test('is left alone up to 40 characters and cut to 40 beyond', () => {
    expect(quoted('a'.repeat(40))).toBe('a'.repeat(40));
    expect(quoted('a'.repeat(41))).toBe(`${'a'.repeat(39)}…`);
  });

  test('is not cut through the middle of a character', () => {
    expect(quoted('😀'.repeat(50))).toBe(`${'😀'.repeat(39)}…`);
  });

  test('loses half characters and terminal escapes', () => {
    expect(quoted('a\ud83d\u001b[2Jb')).toBe('a[2Jb');
  });
});

describe('a megabyte of text', () => {
  const parsers: readonly [string, (text: string) => Result<unknown>][] = [
    ['an address', parseAddress],
    ['an address with its mask', parseAddressWithMask],
    ['a mask', parseMask],
    ['a number', (text) => parseNumber(text, 'm', 0, 10)],
  ];
  const texts = ['1', ' ', '.', '1.', '"', '/', '1 ', '\u200b', '😀', '::', '1,000'];

  test.each(parsers)('typed as %s is refused in milliseconds, and quoted short', (_, parse) => {
    for (const text of texts) {
      const long = text.repeat(Math.ceil(1_048_576 / text.length));
      expect(bestMilliseconds(() => parse(long), 50)).toBeLessThan(50);
      const parsed = parse(long);
      if (parsed.ok) throw new Error('accepted');
      expect(parsed.problem.id).toBe('typed.too-long');
      expect(inWords(parsed.problem).length).toBeLessThan(150);
    }
  });

  test.each(parsers)('and the longest allowed text typed as %s is quick too', (_, parse) => {
    for (const text of texts) {
      const longest = text.repeat(Math.floor(200 / text.length));
      expect(bestMilliseconds(() => parse(longest), 50)).toBeLessThan(50);
    }
  });
});
