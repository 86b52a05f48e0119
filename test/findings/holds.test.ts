import { describe, expect, test } from 'vitest';
import { holds } from '../../src/findings/holds.js';
import type { Condition, Operator, Scalar } from '../../src/rulebase/condition.js';
import { is } from '../ranking/literals.js';
import { facts } from './given.js';

type Truth = boolean | undefined;
const T = is('t', true);
const F = is('t', false);
/** Nobody knows this one. */
const U = is('u', true);
const known = facts({ t: true, n: 5, word: 'red', list: ['a', 'b'] });
const part = (truth: Truth): Condition => (truth === undefined ? U : truth ? T : F);

// The strong three-valued tables of Kleene, Introduction to Metamathematics (1952), section 64; from memory.
const TABLE: readonly (readonly [Truth, Truth, Truth, Truth])[] = [
  // p, q, p and q, p or q
  [true, true, true, true],
  [true, false, false, true],
  [true, undefined, undefined, true],
  [false, true, false, true],
  [false, false, false, false],
  [false, undefined, false, undefined],
  [undefined, true, undefined, true],
  [undefined, false, false, undefined],
  [undefined, undefined, undefined, undefined],
];

describe('three-valued conditions', () => {
  test.each(TABLE)('%s, %s: all is %s, any is %s', (p, q, and, or) => {
    expect(holds({ all: [part(p), part(q)] }, known)).toBe(and);
    expect(holds({ any: [part(p), part(q)] }, known)).toBe(or);
  });

  test.each([
    [true, false],
    [false, true],
    [undefined, undefined],
  ])('not %s is %s', (p, not) => {
    expect(holds({ not: part(p) }, known)).toBe(not);
  });

  test.each<[Operator, Scalar | readonly Scalar[]]>([
    ['equal', 'x'],
    ['notEqual', 'x'],
    ['in', ['x']],
    ['notIn', ['x']],
    ['lessThan', 3],
    ['greaterThanInclusive', 3],
    ['contains', 'x'],
    ['doesNotContain', 'x'],
  ])('%s of a fact nobody knows is unknown, not "not"', (operator, value) => {
    expect(holds({ fact: 'u', operator, value }, known)).toBeUndefined();
  });

  test.each<[string, Operator, Scalar | readonly Scalar[], boolean]>([
    ['n', 'lessThan', 5, false],
    ['n', 'lessThanInclusive', 5, true],
    ['n', 'greaterThan', 5, false],
    ['n', 'greaterThanInclusive', 5, true],
    ['n', 'in', [4, 5], true],
    ['n', 'equal', '5', false],
    ['word', 'notEqual', 'blue', true],
    ['word', 'in', ['blue', 'red'], true],
    ['word', 'notIn', ['blue', 'red'], false],
    ['word', 'lessThan', 9, false],
    ['list', 'contains', 'a', true],
    ['list', 'doesNotContain', 'a', false],
    ['word', 'contains', 'r', false],
    ['word', 'doesNotContain', 'x', false],
  ])('%s %s %j is %s', (fact, operator, value, held) => {
    expect(holds({ fact, operator, value }, known)).toBe(held);
  });
});
