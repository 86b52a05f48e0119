import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { downloadLoad, PLANNED_SHARE, uploadLoad } from '../../../src/arithmetic/bandwidth/line-load.js';
import { bytesIn, mobileData } from '../../../src/arithmetic/bandwidth/mobile-data.js';
import { viewersThatFit } from '../../../src/arithmetic/bandwidth/viewers-that-fit.js';
import { type Between, exactly } from '../../../src/values/between.js';
import { words } from '../given.js';
import { publishedRow } from '../network-references.js';

const one = exactly(1);
const rates = fc.integer({ min: 16_000, max: 20_000_000 });

function range(low: number, high: number): Between {
  return { low, high, isGuess: false };
}

function fits(rate: number, cameras: number, viewers: number, upload: number): string {
  const inputs = {
    rate: exactly(rate),
    cameras: exactly(cameras),
    viewers: exactly(viewers),
    upload: exactly(upload),
  };
  return uploadLoad(inputs, 'each').value.verdict;
}

describe('the load on the upload', () => {
  // Planning practice, from memory: sum of rates times viewers at most 80 % of the uplink.
  test('is fine up to 80 % of the measured rate and not above', () => {
    expect(publishedRow<{ rule: string }>('f-uplink').rule).toContain(`${PLANNED_SHARE}*uplink`);
    expect(fits(4e6, 1, 2, 10e6)).toBe('fine');
    expect(fits(4e6, 1, 2, 9.99e6)).toBe('impossible');
  });

  // Worked example of a web page on bandwidth of cameras: ten at 4 Mbit/s need 40 Mbit/s, fifty need 200.
  test('is the published sum for ten cameras, and on the far side for fifty', () => {
    const row = publishedRow<{
      mbit_s: number;
      cameras: number;
      up_mbit_s: number;
      far_cameras: number;
      down_mbit_s: number;
    }>('f-ex-uplink');
    const rate = exactly(row.mbit_s * 1e6);
    const inputs = { rate, cameras: exactly(row.cameras), viewers: one, upload: exactly(1e9) };
    expect(words(uploadLoad(inputs, 'each').lines)[0]).toContain(`= ${row.up_mbit_s} Mbit/s`);
    const far = downloadLoad({ rate, cameras: exactly(row.far_cameras), download: exactly(1e9) });
    expect(words(far.lines)[0]).toContain(`= ${row.down_mbit_s} Mbit/s`);
  });

  test('on the phone counts every camera shown', () => {
    const inputs = { rate: exactly(4e6), cameras: exactly(2), download: exactly(9e6) };
    expect(downloadLoad(inputs).value.verdict).toBe('impossible');
    expect(downloadLoad({ ...inputs, cameras: one }).value.verdict).toBe('fine');
  });

  test('counts viewers unless a service hands the stream on', () => {
    const inputs = { rate: exactly(4e6), cameras: one, viewers: exactly(5), upload: exactly(10e6) };
    expect(uploadLoad(inputs, 'each').value.verdict).toBe('impossible');
    expect(uploadLoad(inputs, 'once').value.verdict).toBe('fine');
  });

  test('names the input that would decide where it is doubtful', () => {
    const inputs = { rate: range(1e6, 12e6), cameras: one, viewers: one, upload: exactly(5e6) };
    expect(uploadLoad(inputs, 'each').value).toEqual({ verdict: 'doubtful', decides: 'rate' });
  });

  test('never gets lighter with more viewers, more cameras or a higher rate', () => {
    const ranks = ['fine', 'doubtful', 'impossible'];
    const counts = fc.integer({ min: 1, max: 20 });
    fc.assert(
      fc.property(rates, rates, counts, counts, fc.integer({ min: 1, max: 100e6 }), (a, b, m, n, upload) => {
        const light = fits(Math.min(a, b), Math.min(m, n), 1, upload);
        const heavy = fits(Math.max(a, b), Math.max(m, n), Math.max(m, n), upload);
        expect(ranks.indexOf(heavy)).toBeGreaterThanOrEqual(ranks.indexOf(light));
      }),
    );
  });
});

describe('how many can watch', () => {
  test('put back fits, and one more does not', () => {
    fc.assert(
      fc.property(rates, fc.integer({ min: 1, max: 500e6 }), (rate, upload) => {
        const { value } = viewersThatFit({ rate: exactly(rate), cameras: one, upload: exactly(upload) });
        expect(value.low).toBe(value.high);
        if (value.low > 0) expect(fits(rate, 1, value.low, upload)).toBe('fine');
        expect(fits(rate, 1, value.low + 1, upload)).toBe('impossible');
      }),
    );
  });

  test('is said to be nobody where not one stream fits', () => {
    const { lines } = viewersThatFit({ rate: exactly(4e6), cameras: one, upload: exactly(2e6) });
    expect(words(lines)).toEqual(['Not even one can watch.']);
  });

  test('is a range from the worst to the best of uncertain numbers', () => {
    const { value } = viewersThatFit({ rate: range(1e6, 4e6), cameras: one, upload: range(10e6, 20e6) });
    expect(value).toEqual({ low: 2, high: 16 });
  });
});

describe('mobile data', () => {
  // Worked examples of web pages: 5 Mbit/s is 2,250 MB an hour; 20 kbit/s is 9 MB an hour.
  test('is the published amount an hour', () => {
    const picture = publishedRow<{ mbit_s: number; MB_hour: number }>('f-ex-hour-5');
    expect(bytesIn(picture.mbit_s * 1e6, 1)).toBeCloseTo(picture.MB_hour * 1e6, 3);
    const sound = publishedRow<{ kbit_s: number; MB_hour: number; hours_per_1000MB: number }>(
      'f-ex-hour-audio',
    );
    expect(bytesIn(sound.kbit_s * 1e3, 1)).toBeCloseTo(sound.MB_hour * 1e6, 3);
    expect(Math.floor(1e9 / bytesIn(sound.kbit_s * 1e3, 1))).toBe(sound.hours_per_1000MB);
  });

  // Video file formula page: 0.45 GB per Mbit/s and hour.
  test('follows the published formula', () => {
    const row = publishedRow<{ gb_per_mbit_hour: number }>('f-formula');
    expect(bytesIn(1e6, 1)).toBeCloseTo(row.gb_per_mbit_hour * 1e9, 3);
  });

  test('of a month is thirty days of the hours a day', () => {
    const { value } = mobileData(exactly(1e6), exactly(2), range(0.5, 2));
    expect(value.hour).toEqual({ low: 0.9e9, high: 0.9e9 });
    expect(value.month).toEqual({ low: 13.5e9, high: 54e9 });
  });
});
