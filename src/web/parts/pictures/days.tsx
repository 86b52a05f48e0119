import type { Days } from '../../../call/pictures/card-days.js';
import { say } from '../../../messages/say.js';

const [WIDE, EDGE] = [400, 10];
const shown = (days: number): string => String(Number(days.toPrecision(2)));

/** The days on the card as a bar: what is sure, what may be, and what is wanted. */
export function DaysPicture({ days: { low, high, wanted, whole, says } }: { readonly days: Days }) {
  const wide = (days: number): number => (days / whole) * (WIDE - 2 * EDGE);
  return (
    <figure class="picture days">
      <figcaption>{say('picture.days')}</figcaption>
      <svg viewBox={`0 0 ${WIDE} 48`} role="img" aria-label={says}>
        <rect x={EDGE} y="16" width={WIDE - 2 * EDGE} height="16" rx="3" class="room" />
        <rect x={EDGE} y="16" width={wide(high)} height="16" class="perhaps" />
        <rect x={EDGE} y="16" width={wide(low)} height="16" class="sure" />
        {wanted !== undefined && <path d={`M${EDGE + wide(wanted)} 8v32`} class="wanted" />}
      </svg>
      <ul class="legend">
        <li>
          <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
            <rect x="2" y="4" width="16" height="12" class="sure" />
          </svg>
          <span>{say('picture.days-sure', { low: shown(low) })}</span>
        </li>
        <li>
          <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
            <rect x="2" y="4" width="16" height="12" class="perhaps" />
          </svg>
          <span>{say('picture.days-perhaps', { high: shown(high) })}</span>
        </li>
        {wanted !== undefined && (
          <li>
            <svg viewBox="0 0 20 20" aria-hidden="true" focusable="false">
              <path d="M10 2v16" class="wanted" />
            </svg>
            <span>{say('picture.days-wanted', { wanted: shown(wanted) })}</span>
          </li>
        )}
      </ul>
    </figure>
  );
}
