import { ok, problem, type Result } from './result.js';
import { quoted, tidy } from './tidy.js';

/** The least and the most that local time is ahead of UTC anywhere, in minutes (time zone database). */
export const ZONE_MIN = -12 * 60;
export const ZONE_MAX = 14 * 60;

const OFFSET = /^(?:utc|gmt)? ?([+−-]) ?(\d{1,2})(?::?(\d{2}))?$/i;

/** How many minutes a time zone is ahead of UTC: `Z`, `UTC`, `GMT`, `+02:00`, `-0530`, `UTC+2`. */
export function parseZone(text: string): Result<number> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const bare = tidied.value.replace(/^\(|\)$/g, '');
  if (/^(?:z|utc|gmt)$/i.test(bare)) return ok(0);
  const [, sign, hours = '', minutes = '0'] = OFFSET.exec(bare) ?? [];
  const size = Number(hours) * 60 + Number(minutes);
  const ahead = sign === '+' ? size : 0 - size;
  const isOne = sign !== undefined && Number(minutes) < 60 && ahead >= ZONE_MIN && ahead <= ZONE_MAX;
  return isOne ? ok(ahead) : problem({ id: 'moment.zone-unclear', with: { text: quoted(tidied.value) } });
}
