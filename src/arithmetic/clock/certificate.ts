import type { MessageId } from '../../messages/say.js';
import { type Moment, showInUtc } from '../../values/moment.js';
import { ZONE_MAX, ZONE_MIN } from '../../values/zone.js';
import type { Worked } from '../worked.js';

/** Where a time stands to a certificate's validity; `not-told` where zone or minutes leave it open. */
export type Validity = 'not-yet' | 'valid' | 'expired' | 'not-told';

/** From when to when a certificate is valid; both ends count. */
export interface Certificate {
  readonly from: Moment;
  readonly until?: Moment | undefined;
}

const WORDS = {
  'not-yet': 'clock.certificate-not-yet',
  valid: 'clock.certificate-valid',
  expired: 'clock.certificate-expired',
  'not-told': 'clock.certificate-not-told',
} as const satisfies Record<Validity, MessageId>;

/**
 * Whether a certificate is valid at a time: notBefore <= time <= notAfter (RFC 5280, sections 4.1.2.5
 * and 6.1.3). A time without a zone may be anything from UTC-12 to UTC+14.
 */
export function validityAt(time: Moment, certificate: Certificate): Worked<Validity> {
  const value = validity(time, certificate);
  const until = certificate.until === undefined ? '' : showInUtc(certificate.until);
  const said = { time: showInUtc(time), from: showInUtc(certificate.from), until };
  return { value, lines: [{ id: WORDS[value], with: said }] };
}

function validity(time: Moment, { from, until }: Certificate): Validity {
  const [now, start] = [utc(time), utc(from)];
  const end = until === undefined ? undefined : utc(until);
  if (now.high < start.low) return 'not-yet';
  if (end !== undefined && now.low > end.high) return 'expired';
  const hasBegun = now.low >= start.high;
  const lasts = end === undefined || now.high <= end.low;
  return hasBegun && lasts ? 'valid' : 'not-told';
}

/** The first and last second, counted in UTC, that a written time may be. */
function utc({ seconds, within, zoneMinutes }: Moment) {
  const zones =
    zoneMinutes === undefined ? { low: ZONE_MIN, high: ZONE_MAX } : { low: zoneMinutes, high: zoneMinutes };
  return { low: seconds - zones.high * 60, high: seconds + within - 1 - zones.low * 60 };
}
