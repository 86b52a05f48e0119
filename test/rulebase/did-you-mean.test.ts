import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../src/rulebase/did-you-mean.js';

describe('the nearest known word', () => {
  it('counts edits: kitten to sitting are 3 (worked example of common textbooks)', () => {
    expect(editDistance('kitten', 'sitting')).toBe(3);
    expect(editDistance('', 'abc')).toBe(3);
  });

  it('is a distance: symmetric, zero only for equals, never a detour', () => {
    const word = fc.string({ maxLength: 8, unit: fc.constantFrom('a', 'b', 'c') });
    fc.assert(
      fc.property(word, word, word, (a, b, c) => {
        expect(editDistance(a, b)).toBe(editDistance(b, a));
        expect(editDistance(a, b) === 0).toBe(a === b);
        expect(editDistance(a, c)).toBeLessThanOrEqual(editDistance(a, b) + editDistance(b, c));
      }),
    );
  });

  it('is offered only where it is near', () => {
    expect(nearest('patch-laed', ['ladder', 'patch-lead', 'patch-panel'])).toBe('patch-lead');
    expect(nearest('zzzz', ['ladder', 'patch-lead'])).toBeUndefined();
    expect(nearest('x'.repeat(1_000_000), ['x'])).toBeUndefined();
  });

  it('does not depend on the order of the known words', () => {
    expect(nearest('bot', ['bit', 'bat'])).toBe('bat');
    expect(nearest('bot', ['bat', 'bit'])).toBe('bat');
  });
});
