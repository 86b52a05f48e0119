import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clean } from '../../src/ticket/clean.js';
import { hostileText, UNSEEN } from './hostile.js';

test('a terminal sequence goes as a whole (ECMA-48)', () => {
  expect(clean('a\u001b[1;31mred\u001b[0m b')).toBe('ared b');
  expect(clean('\u001b]8;;http://camera.example\u0007link\u001b]8;;\u001b\\')).toBe('link');
  expect(clean('\u009b2Jx \u001bcy')).toBe('x y');
});

test('an unfinished sequence takes no words with it', () => {
  expect(clean('\u001b]0;the camera is off')).toBe('0;the camera is off');
});

test('line breaks, tabs and wide spaces become one space', () => {
  expect(clean(' a\r\n\n b\tc\u2028d\u00a0 e\u0085f ')).toBe('a b c d e f');
});

test('characters nobody sees go, and so do halves of a character', () => {
  expect(clean('a\u200bb\u202ec\ufeffd\u0000e\ud800f😀')).toBe('abcdef😀');
});

test('nothing unseen is left, and cleaning twice changes nothing', () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      const cleaned = clean(text);
      expect(cleaned).not.toMatch(UNSEEN);
      expect(cleaned).not.toContain('\n');
      expect(clean(cleaned)).toBe(cleaned);
    }),
    { numRuns: 1000 },
  );
});
