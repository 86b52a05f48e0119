import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { added, beginningOf, EMPTY, type Typed, textOf } from '../../../src/cli/prompts/typed.js';

/** What a key does to the text: a letter is put at its end, a backspace takes one off. */
const keys = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.string({ minLength: 1, maxLength: 40 }) },
    fc.constant('back' as const),
  ),
  { maxLength: 60 },
);

function press(typed: Typed, key: string): Typed {
  if (key !== 'back') return added(typed, typed.line + key);
  return added(typed, [...typed.line].slice(0, -1).join(''), true);
}

describe('a text that is kept in two parts', () => {
  it('is the same text as one kept whole, whatever is typed and taken back', () => {
    fc.assert(
      fc.property(keys, (pressed) => {
        let whole = '';
        let typed = EMPTY;
        for (const key of pressed) {
          typed = press(typed, key);
          whole = key === 'back' ? [...whole].slice(0, -1).join('') : whole + key;
          expect(textOf(typed)).toBe(whole);
        }
      }),
    );
  });

  it('leaves the editor little to go over, however much there is', () => {
    let typed = EMPTY;
    for (let i = 0; i < 3000; i++) typed = press(typed, 'a few words more ');
    expect(typed.line.length).toBeLessThan(200);
    expect(textOf(typed)).toHaveLength(51_000);
    for (let i = 0; i < 1000; i++) typed = press(typed, 'back');
    expect(textOf(typed)).toHaveLength(50_000);
    expect(typed.line.length).toBeLessThan(200);
  });

  it('gives its beginning', () => {
    expect(beginningOf({ head: 'abc', line: 'def' }, 2)).toBe('ab');
    expect(beginningOf({ head: 'abc', line: 'def' }, 5)).toBe('abcde');
    expect(beginningOf(EMPTY, 5)).toBe('');
  });
});
