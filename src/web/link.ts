/** A record in the fragment of a link: deflated with its checksum (RFC 1950), in base64url (RFC 4648, section 5). */
const BEGINNING = '#r=';
const IN_TEXT = /#r(?:=|%3D)([\w-]+)/i;

/** A link that was made: where it leads, and the part of it that holds the record. */
export interface Link {
  readonly address: string;
  readonly fragment: string;
}

/** Past this many characters, programs for mail and chat break a link. */
export const LONGEST_LINK = 8000;
/** What a link may unpack to, in bytes: a small one can be made to hold a whole disk. */
const MOST_BYTES = 2 ** 20;
const CHUNK = 0x8000;

/** What a link holds, or why it holds nothing: a part of it is missing or wrong, or it is far too large. */
export type FromLink =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly why: 'broken' | 'too-large' };

/** The fragment that holds this text; `undefined` where this browser cannot pack it. */
export async function fragmentOf(text: string): Promise<string | undefined> {
  try {
    const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate'));
    return BEGINNING + base64url(new Uint8Array(await new Response(packed).arrayBuffer()));
  } catch {
    return undefined;
  }
}

/** Whether a link or a text around it holds a record. */
export function holdsLink(text: string): boolean {
  return IN_TEXT.test(text);
}

/** The bytes of the record in a link, wherever in a text it stands. Unpacks no more than a record may have. */
export async function bytesOfLink(text: string): Promise<FromLink> {
  try {
    const [, base64 = ''] = IN_TEXT.exec(text) ?? [];
    const letters = atob(base64.replaceAll('-', '+').replaceAll('_', '/'));
    const packed = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    return await unpacked(new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate')));
  } catch {
    return { ok: false, why: 'broken' };
  }
}

async function unpacked(stream: ReadableStream<Uint8Array>): Promise<FromLink> {
  const reader = stream.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  for (let length = 0; ; ) {
    const { done, value } = await reader.read();
    if (done) return { ok: true, bytes: new Uint8Array(await new Blob(parts).arrayBuffer()) };
    length += value.length;
    if (length > MOST_BYTES) {
      await reader.cancel();
      return { ok: false, why: 'too-large' };
    }
    parts.push(new Uint8Array(value));
  }
}

function base64url(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += CHUNK)
    letters += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}
