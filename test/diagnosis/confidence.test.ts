import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { confidenceOf } from '../../src/diagnosis/confidence.js';
import { share } from '../../src/diagnosis/share.js';

const ORDER = ['not-enough', 'possible', 'likely', 'very-likely', 'almost-certain'];

describe('the word for a probability', () => {
  // The thresholds are judged; what is held here is where each begins.
  it.each([
    [0, 'not-enough'],
    [0.249999, 'not-enough'],
    [0.25, 'possible'],
    [0.499999, 'possible'],
    [0.5, 'likely'],
    [0.799999, 'likely'],
    [0.8, 'very-likely'],
    [0.949999, 'very-likely'],
    [0.95, 'almost-certain'],
    [1, 'almost-certain'],
  ])('%f is %s', (probability, word) => {
    expect(confidenceOf(probability)).toBe(word);
  });

  it('never grows weaker as the probability grows', () => {
    const probability = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(probability, probability, (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(ORDER.indexOf(confidenceOf(more))).toBeGreaterThanOrEqual(ORDER.indexOf(confidenceOf(less)));
      }),
    );
  });
});

describe('a probability in a diagnosis', () => {
  it('is kept to a millionth, so that the last bits of a logarithm change no byte', () => {
    expect(share(0.1 + 0.2)).toBe(0.3);
    expect(share(0.12345649)).toBe(0.123456);
    expect(share(1 - 1e-9)).toBe(1);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (p) => {
        expect(Math.abs(share(p) - p)).toBeLessThanOrEqual(0.5e-6 + 1e-15);
        expect(share(share(p))).toBe(share(p));
      }),
    );
  });
});
