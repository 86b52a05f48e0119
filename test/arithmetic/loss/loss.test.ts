import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explanations } from '../../../src/arithmetic/loss/explanations.js';
import { lossStanding } from '../../../src/arithmetic/loss/loss-standing.js';
import { gaps, type PingSummary, spread } from '../../../src/arithmetic/loss/shape.js';
import {
  framesHit,
  packetsAFrame,
  streamEffect,
  tcpCeiling,
} from '../../../src/arithmetic/loss/stream-effect.js';
import { words } from '../given.js';
import { publishedRow } from '../network-references.js';

function ping(given: Partial<PingSummary>): PingSummary {
  return { sent: 100, received: 95, duplicates: 0, ...given };
}

describe('what a ping says of the loss', () => {
  test('one lost of four is not called 25 %', () => {
    const { value, lines } = lossStanding(4, 3);
    expect(value.verdict).toBe('doubtful');
    expect(value.decides).toBe('sent');
    expect(words(lines)[0]).toContain('4.559–69.94 %');
  });

  test('four of four answered do not prove a good line', () => {
    expect(lossStanding(4, 4).value.verdict).toBe('doubtful');
  });

  test('so many without a loss do, as the line says', () => {
    expect(words(lossStanding(4, 4).lines)[1]).toContain('381 without a loss');
    expect(lossStanding(381, 381).value.verdict).toBe('fine');
  });

  test('wholly between good and bad it asks for no more packets', () => {
    const { value } = lossStanding(1000, 960);
    expect(value.verdict).toBe('doubtful');
    expect(value.decides).toBeUndefined();
  });

  test('heavy loss is impossible for a picture', () => {
    expect(lossStanding(100, 60).value.verdict).toBe('impossible');
  });

  test('no answer at all is no loss on the way', () => {
    expect(words(lossStanding(4, 0).lines)).toEqual([
      'None of 4 came back. That is no loss on the way: the camera cannot be reached, or does not answer.',
    ]);
  });
});

describe('how gaps and round trips lie', () => {
  test('losses one by one are single, long gaps are bursts', () => {
    expect(gaps(ping({ runs: [1, 1, 1, 2] }))).toBe('single');
    expect(gaps(ping({ runs: [5] }))).toBe('bursts');
    expect(gaps(ping({}))).toBe('unknown');
  });

  test.each([
    [1, 2, 4, 'tight'],
    [2, 8, 300, 'peaks'],
    [20, 180, 400, 'swollen'],
    [10, 15, 35, 'uneven'],
    [undefined, 15, 35, 'unknown'],
  ])('%s / %s / %s ms are %s', (shortest, mean, longest, expected) => {
    expect(spread(ping({ shortest, mean, longest }))).toBe(expected);
  });
});

describe('what may lie behind it', () => {
  const peaks = { shortest: 2, mean: 8, longest: 300 };
  const tight = { shortest: 1, mean: 1, longest: 2 };
  const swollen = { shortest: 20, mean: 180, longest: 400 };

  test('quick answers with late ones go with a wireless hop, unless all is cable', () => {
    expect(explanations(ping(peaks), 'dont-know').value?.wireless).toBe('fits');
    expect(explanations(ping(peaks), 'cable-only').value?.wireless).toBe('against');
  });

  test('single losses among quick answers go with a bad cable', () => {
    const { value } = explanations(ping({ ...tight, runs: [1, 1, 1, 1, 1] }), 'cable-only');
    expect(value).toMatchObject({ cable: 'fits', congestion: 'against', wireless: 'against' });
  });

  test('all answers late go with a full line and not with a cable', () => {
    const { value } = explanations(ping(swollen), 'dont-know');
    expect(value).toMatchObject({ congestion: 'fits', cable: 'against' });
  });

  test('answers that came twice go with one address used twice', () => {
    expect(explanations(ping({ duplicates: 3 }), 'dont-know').value?.['same-address']).toBe('fits');
    expect(explanations(ping({ received: 50, runs: [50] }), 'dont-know').value?.['same-address']).toBe(
      'could',
    );
    const onesOnly = Array.from({ length: 30 }, () => 1);
    expect(explanations(ping({ received: 70, runs: onesOnly }), 'dont-know').value?.['same-address']).toBe(
      'against',
    );
    expect(explanations(ping({ runs: [1, 1, 3] }), 'dont-know').value?.['same-address']).toBe('against');
  });

  test('nothing is explained where nothing is wrong or nothing answers', () => {
    expect(explanations(ping({ received: 100, ...tight }), 'dont-know')).toEqual({
      value: undefined,
      lines: [],
    });
    expect(explanations(ping({ received: 0 }), 'dont-know').lines).toEqual([]);
  });

  test('is said to be judged', () => {
    expect(words(explanations(ping(peaks), 'dont-know').lines)[0]).toContain('judged');
  });
});

describe('what it does to a stream', () => {
  const shares = fc.double({ min: 1e-6, max: 0.3, noNaN: true });

  test('no loss hits no frame, all loss hits every one', () => {
    expect(framesHit(0, 12)).toBe(0);
    expect(framesHit(1, 12)).toBe(1);
    expect(framesHit(0.01, 1)).toBeCloseTo(0.01, 12);
  });

  test('a frame of 2 Mbit/s at 15 a second takes about twelve packets of 1400 bytes', () => {
    expect(packetsAFrame(2e6, 15)).toBeCloseTo(11.905, 3);
    expect(packetsAFrame(16_000, 25)).toBe(1);
  });

  // Mathis and others 1997, equation 3; C by the row.
  test('TCP reaches MSS/RTT times C over the root of the loss', () => {
    const { C } = publishedRow<{ C: number }>('l-mathis');
    const expected = ((1460 * 8) / 0.1) * (C / Math.sqrt(0.0001));
    expect(Math.abs(tcpCeiling(0.0001, 100) / expected - 1)).toBeLessThan(0.005);
  });

  test('more loss or a longer way never makes it better', () => {
    fc.assert(
      fc.property(shares, shares, fc.integer({ min: 1, max: 500 }), (a, b, roundTrip) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(framesHit(more, 12)).toBeGreaterThanOrEqual(framesHit(less, 12));
        expect(tcpCeiling(more, roundTrip)).toBeLessThanOrEqual(tcpCeiling(less, roundTrip));
        expect(tcpCeiling(less, roundTrip + 1)).toBeLessThan(tcpCeiling(less, roundTrip));
      }),
    );
  });

  test('says when TCP is too slow for the stream', () => {
    const slow = streamEffect({ low: 0.02, high: 0.05 }, 4e6, 15, 200);
    expect(words(slow.lines)[1]).toContain('stalls');
    expect(streamEffect({ low: 0, high: 0.05 }, 4e6, 15).value.tcpBitsPerSecond).toBeUndefined();
  });
});
