import { describe, expect, test } from 'vitest';
import { parseBetween } from '../../src/values/between.js';
import { parseBitRate } from '../../src/values/bit-rate.js';
import { saysUnknown } from '../../src/values/unknown-words.js';
import { accepted, refusal } from './accepted.js';

const USUAL = { low: 1e6, high: 12e6 };

function parse(text: string) {
  return parseBetween(text, parseBitRate, USUAL);
}

describe('a number that may be a range', () => {
  test.each([
    ['4 Mbit/s', 4e6, 4e6],
    ['2-4 Mbit/s', 2e6, 4e6],
    ['2 – 4 Mbit/s', 2e6, 4e6],
    ['2 to 4 Mbit/s', 2e6, 4e6],
    ['2..4 Mbit/s', 2e6, 4e6],
    ['between 2 and 4 Mbit/s', 2e6, 4e6],
    ['from 2 to 4 Mbit/s', 2e6, 4e6],
    ['512 kbps - 2 Mbps', 512e3, 2e6],
    ['2 Mbit/s - 4', 2e6, 4e6],
    ['0,5-1,5 Mbit/s', 0.5e6, 1.5e6],
    ['.5-1 Mbit/s', 0.5e6, 1e6],
  ])('%s is %d to %d bit/s', (text, low, high) => {
    expect(accepted(parse(text))).toEqual({ low, high, isGuess: false });
  });

  test.each(['?', "don't know", 'don’t know', 'Dont know', "can't tell", 'no idea', 'Not sure', 'unknown'])(
    '%s gives what is usual, marked as a guess',
    (text) => {
      expect(accepted(parse(text))).toEqual({ ...USUAL, isGuess: true });
    },
  );

  test('a range that runs backwards is refused with the order to type', () => {
    expect(refusal(parse('4-2 Mbit/s'))).toContain('2 Mbit/s to 4 Mbit/s');
  });

  test('a minus sign is not the middle of a range', () => {
    expect(refusal(parse('-4 Mbit/s'))).toContain('outside');
  });

  test('a range of three numbers is refused', () => {
    expect(parse('1-2-3 Mbit/s').ok).toBe(false);
  });

  test('a number is not taken for not knowing', () => {
    expect(['4', 'know', 'yes', ''].map(saysUnknown)).toEqual([false, false, false, false]);
  });
});
