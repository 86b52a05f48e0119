import { describe, expect, test } from 'vitest';
import { filledLines } from '../../src/call/filled.js';
import { TINY } from './tiny-rule-base.js';

describe('what a text filled in', () => {
  test('is said answer by answer, in words, each with its line, under a heading', () => {
    expect(
      filledLines(TINY, [
        { question: 'camera-address', answer: '172.23.40.57', line: 12 },
        { question: 'camera-mask', answer: '/24', line: 13 },
        { question: 'loose', answer: false, line: 20 },
        { question: 'lights', answer: 'on', line: 21 },
      ]),
    ).toEqual([
      'Filled in from the text:',
      '  Title of camera-address: 172.23.40.57 (line 12)',
      '  Title of camera-mask: 255.255.255.0 (line 13)',
      '  Title of loose: No (line 20)',
      '  Title of lights: it is on (line 21)',
    ]);
  });

  test('leaves out what the rule base does not know or take', () => {
    expect(
      filledLines(TINY, [
        { question: 'toaster', answer: true, line: 1 },
        { question: 'camera-address', answer: 'the usual one', line: 2 },
      ]),
    ).toEqual(['Filled in from the text:']);
  });

  test('is said to be nothing where there is no answer', () => {
    expect(filledLines(TINY, [])).toEqual([
      'The text answers no question of this call. It is kept with the record.',
    ]);
  });
});
