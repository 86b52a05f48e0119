import { type CodePage, characterOf } from './code-pages.js';

/** So many bytes at once; they also tell whether every other one is nought. */
const LOOKED_AT = 4096;
/** The longest character of UTF-8 lacks three bytes where the text was cut. */
const MOST_LOST = 3;

/** The text in a file or the clipboard, whatever it was written in. Where nothing tells: UTF-8, then 1252. */
export function textOf(bytes: Uint8Array): string {
  const wide = wideEncodingOf(bytes);
  if (wide !== undefined) return withoutMark(new TextDecoder(wide).decode(bytes));
  return withoutMark(utf8Of(bytes) ?? westernOf(bytes));
}

function withoutMark(text: string): string {
  return text.startsWith('\ufeff') ? text.slice(1) : text;
}

function wideEncodingOf(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const head = bytes.subarray(0, LOOKED_AT);
  const noughts = [0, 0];
  for (const [place, byte] of head.entries())
    if (byte === 0) noughts[place % 2] = (noughts[place % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = noughts;
  // Blanks, digits and line ends have a nought in every language.
  const enough = head.length / 16;
  if (odd > enough && odd > 8 * even) return 'utf-16le';
  return even > enough && even > 8 * odd ? 'utf-16be' : undefined;
}

function utf8Of(bytes: Uint8Array): string | undefined {
  for (let lost = 0; lost <= MOST_LOST; lost++) {
    try {
      return new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, bytes.length - lost));
    } catch {
      // Not UTF-8, or cut within its last character.
      if (!isCutAt(bytes, lost + 1)) return undefined;
    }
  }
  return undefined;
}

/** Whether only bytes that a longer character begins with stand in the last `count` places. */
function isCutAt(bytes: Uint8Array, count: number): boolean {
  const cut = bytes.subarray(Math.max(0, bytes.length - count));
  return cut.length === count && cut.every((byte) => byte >= 0x80);
}

function westernOf(bytes: Uint8Array): string {
  const [dos, windows] = (['850', '1252'] as const).map((name) => decoded(bytes, name));
  if (dos === undefined || windows === undefined) return '';
  return oddLetters(dos) < oddLetters(windows) ? dos : windows;
}

function decoded(bytes: Uint8Array, page: CodePage): string {
  const codes = Uint16Array.from({ length: 256 }, (_, byte) => characterOf(byte, page).charCodeAt(0));
  const pieces: string[] = [];
  for (let from = 0; from < bytes.length; from += LOOKED_AT) {
    const piece = Uint16Array.from(bytes.subarray(from, from + LOOKED_AT));
    for (let at = 0; at < piece.length; at++) piece[at] = codes[piece[at] ?? 0] ?? 0;
    pieces.push(String.fromCharCode(...piece));
  }
  return pieces.join('');
}

/** Capitals inside words, signs between letters, letters that hardly any language has, and frames. */
const ODD =
  /(?<=[a-z])[^\P{Lu}A-Z]|(?<=[A-Za-z])[^\p{L}\p{M}\s -~’‘–—…«»](?=[A-Za-z])|(?<=[A-Za-z])[‚„‡†ˆƒ]|[ÿþÞðÐ¶±¾¬¦¤¢¨¯¸³÷\u2500-\u25ff\u0081-\u009f]/gu;

function oddLetters(text: string): number {
  return text.match(ODD)?.length ?? 0;
}
