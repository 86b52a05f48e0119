import { deflateRawSync, inflateRawSync } from 'node:zlib';

/** The record in a link, read by Node's own zlib and base64url, not by the page's reader. */
export function recordIn(link: string): string {
  const [, base64 = ''] = link.split('#r=');
  return inflateRawSync(Buffer.from(base64, 'base64url')).toString('utf8');
}

/** The fragment of a record, made by Node's own zlib. */
export function fragmentWith(record: string | Buffer): string {
  return `#r=${deflateRawSync(record).toString('base64url')}`;
}
