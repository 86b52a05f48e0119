import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { validityAt } from '../../../src/arithmetic/clock/certificate.js';
import { foundInstead } from '../../../src/arithmetic/clock/found-instead.js';
import { clockMistake } from '../../../src/arithmetic/clock/mistake.js';
import { clockOffset } from '../../../src/arithmetic/clock/offset.js';
import { TOKEN_WINDOW_SECONDS, tokenWindow } from '../../../src/arithmetic/clock/token-window.js';
import { type Moment, parseMoment } from '../../../src/values/moment.js';
import { accepted } from '../../values/accepted.js';
import { words } from '../given.js';
import { publishedRow } from '../network-references.js';

function moment(text: string): Moment {
  return accepted(parseMoment(text));
}

function offset(camera: string, truth: string) {
  return clockOffset(moment(camera), moment(truth)).value;
}

describe('how far a clock is off', () => {
  test('is a range of a minute either way where only minutes were read', () => {
    expect(offset('2026-11-25 14:40', '2026-11-25 14:30')).toEqual({ low: 540, high: 660 });
  });

  test('is a second either way where seconds were read', () => {
    expect(offset('2026-11-25 14:30:20', '2026-11-25 14:30:00')).toEqual({ low: 19, high: 21 });
  });

  test('heeds zones where both times have one, and takes them as written otherwise', () => {
    expect(offset('2026-11-25 15:30 +01:00', '2026-11-25 14:30 UTC')).toEqual({ low: -60, high: 60 });
    expect(offset('2026-11-25 15:30', '2026-11-25 14:30 UTC')).toEqual({ low: 3540, high: 3660 });
  });

  test('contains every difference that the two readings leave open', () => {
    const times = fc.integer({ min: 0, max: 2e9 });
    fc.assert(
      fc.property(times, times, (camera, truth) => {
        const minute = (seconds: number): Moment => ({
          kind: 'moment',
          seconds: seconds - (seconds % 60),
          within: 60,
        });
        const { low, high } = clockOffset(minute(camera), minute(truth)).value;
        expect(camera - truth).toBeGreaterThanOrEqual(low);
        expect(camera - truth).toBeLessThanOrEqual(high);
      }),
    );
  });

  test('is said ahead or behind in a unit of its size', () => {
    const line = (camera: string): string | undefined =>
      words(clockOffset(moment(camera), moment('2026-11-25 14:30:00')).lines).at(-1);
    expect(line('2026-11-25 14:40:00')).toBe('The clock is ahead by 10 min, give or take 1 s.');
    expect(line('2026-11-25 04:30:00')).toBe('The clock is behind by 10 h, give or take 1 s.');
    expect(line('2026-11-25 14:30:00')).toBe('The clock agrees, within 1 s.');
  });
});

// OASIS WSS UsernameToken Profile 1.1.1, section 3.1: five minutes as the suggested least.
describe('a sign-in token', () => {
  test('has the window that the standard suggests', () => {
    const row = publishedRow<{ freshness_minimum_s: number }>('h-oasis-5min');
    expect(TOKEN_WINDOW_SECONDS).toBe(row.freshness_minimum_s);
  });

  test.each([
    ['2026-11-25 14:34:58', 'fine'],
    ['2026-11-25 14:35:30', 'impossible'],
    ['2026-11-25 14:24:00', 'impossible'],
    ['2026-11-25 14:35:00', 'doubtful'],
  ])('from a clock at %s when it is 14:30:00 is %s', (camera, verdict) => {
    expect(tokenWindow(offset(camera, '2026-11-25 14:30:00'), 300).value.verdict).toBe(verdict);
  });

  test('is doubtful on either side of the window where only minutes were read', () => {
    const { value } = tokenWindow(offset('2026-11-25 14:35', '2026-11-25 14:30'), 300);
    expect(value).toEqual({ verdict: 'doubtful', decides: 'camera' });
  });
});

// RFC 5280, sections 4.1.2.5 and 6.1.3: both ends count.
describe('a certificate', () => {
  const certificate = { from: moment('2026-01-01 00:00:00 UTC'), until: moment('2026-12-31 23:59:59 UTC') };

  test.each([
    ['2025-12-31 23:59:59 UTC', 'not-yet'],
    ['2026-01-01 00:00:00 UTC', 'valid'],
    ['2026-12-31 23:59:59 UTC', 'valid'],
    ['2027-01-01 00:00:00 UTC', 'expired'],
    ['2026-01-01 00:30:00 +01:00', 'not-yet'],
    ['2026-06-01 12:00', 'valid'],
    ['1970-01-01 00:04', 'not-yet'],
    ['2026-01-01 05:00', 'not-told'],
    ['2026-12-31', 'not-told'],
  ])('at %s is %s', (time, expected) => {
    expect(publishedRow<{ rule: string }>('h-5280').rule).toBe('notBefore <= now <= notAfter');
    expect(validityAt(moment(time), certificate).value).toBe(expected);
  });

  test('without an end never expires', () => {
    expect(validityAt(moment('2090-01-01'), { from: certificate.from }).value).toBe('valid');
  });
});

describe('what an offset looks like', () => {
  const at = '2026-11-25 14:30';

  test.each([
    ['2026-11-25 14:31', 'none'],
    ['2026-11-25 13:30', 'summer-time'],
    ['2026-11-25 15:31', 'summer-time'],
    ['2026-11-26 02:30', 'half-day'],
    ['2026-11-25 04:30', 'zone'],
    ['2026-11-25 20:00', 'zone'],
    ['2026-11-26 16:30', 'zone'],
    ['2026-11-22 14:30', 'date'],
    ['2026-11-25 14:22', 'drift'],
    ['2026-11-25 14:45', 'drift'],
    ['2026-06-02 03:11', 'drift'],
    ['1970-01-01 00:04', 'never-set'],
    ['2000-01-03 14:30', 'never-set'],
  ])('%s instead of 14:30 is %s', (camera, expected) => {
    expect(clockMistake(moment(camera), offset(camera, at)).value).toBe(expected);
  });

  test('names the hours of a zone', () => {
    const { lines } = clockMistake(moment('2026-11-25 04:30'), offset('2026-11-25 04:30', at));
    expect(words(lines)[0]).toContain('10 h');
  });
});

describe('where a recording stands instead', () => {
  const hour = offset('2026-11-25 13:30:00', '2026-11-25 14:30:00');

  test('is the true time moved by the offset', () => {
    const found = foundInstead(moment('2026-11-24 09:00:00'), hour);
    expect(words(found.lines)[0]).toMatch(/between 2026-11-24 07:59:59 and 2026-11-24 08:00:02/);
    expect(found.value.isAnotherDay).toBe(false);
  });

  test('may be under another day', () => {
    expect(foundInstead(moment('2026-11-24 00:10:00'), hour).value.isAnotherDay).toBe(true);
  });
});
