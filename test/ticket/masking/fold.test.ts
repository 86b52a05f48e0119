import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../../src/ticket/masking/fold.js';

/** The decimal numbering systems of CLDR, as the platform's Intl has them, below U+10000. */
const SYSTEMS = Intl.supportedValuesOf('numberingSystem').filter((system) =>
  /^\p{Nd}+$/u.test(written(system)) ? written(system).length === 10 : false,
);

function written(system: string): string {
  return new Intl.NumberFormat('en', { numberingSystem: system, useGrouping: false }).format(9_876_543_210);
}

test('digits of every script are read as what they are, as CLDR knows them', () => {
  expect(SYSTEMS).toEqual(expect.arrayContaining(['arab', 'deva', 'fullwide', 'latn', 'mymr', 'thai']));
  for (const system of SYSTEMS) expect(fold(written(system))).toBe('9876543210');
});

test('full-width letters, dashes and wide spaces become plain ones', () => {
  expect(fold('Ａ＠ｂ．ｃ：１')).toBe('A@b.c:1');
  expect(fold('00‐1B–44—11−3A\u00a0B7')).toBe('00-1B-44-11-3A B7');
});

test('the length never changes, so that a place in it is a place in the original', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => fold(text).length === text.length));
});
