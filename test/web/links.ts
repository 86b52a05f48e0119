import { deflateSync, inflateSync } from 'node:zlib';

/** The record in a link, read by Node's own zlib and base64url, not by the page's reader. */
export function recordIn(link: string): string {
  const [, base64 = ''] = link.split('#r=');
  return inflateSync(Buffer.from(base64, 'base64url')).toString('utf8');
}

/** The fragment of a record, made by Node's own zlib. */
export function fragmentWith(record: string | Buffer): string {
  return `#r=${deflateSync(record).toString('base64url')}`;
}

/** The fragment of a record that holds the checksum (Adler-32, RFC 1950) of another, as after a fault on the way. */
export function withChecksumOf(whole: string, changed: string): string {
  const packed = Buffer.concat([deflateSync(changed).subarray(0, -4), deflateSync(whole).subarray(-4)]);
  return `#r=${packed.toString('base64url')}`;
}
