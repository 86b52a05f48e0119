import type { CallHeader } from '../events.js';

/** The file name of a new record, `<date>-<time>-<id>.jsonl`, so that names sort by time (in UTC). */
export function recordName(header: Pick<CallHeader, 'id' | 'opened'>): string {
  const [date, time = ''] = header.opened.split('T');
  if (!/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/.test(header.id))
    throw new Error(`not an id for a file name: ${header.id}`);
  return `${date}-${time.slice(0, 8).replaceAll(':', '')}-${header.id}.jsonl`;
}
