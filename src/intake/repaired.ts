import { type CodePage, characterOf, upperByteOf } from './code-pages.js';

const NOT_ASCII = /[\u0080-\uffff]/;
/** Twice wrong is seen at times; more than that never. */
const MOST_ROUNDS = 3;

/** What a program wrote in one code page and another read in the other: signs that stand inside words only then. */
const MIXED_UP: readonly { readonly read: CodePage; readonly written: CodePage; readonly sign: RegExp }[] = [
  {
    read: '1252',
    written: '850',
    sign: /[A-Za-z](?:[‚„ˆ‡\u0081\u008d]|[•™¡¢£¤]\p{L})|[A-Za-z0-9]ÿ ?[.:]/u,
  },
  { read: '850', written: '1252', sign: /[A-Za-z](?:[÷³▀±¾]\p{L})/u },
];
/** Letters that such a text could hold only if it had been read rightly. */
const READ_RIGHTLY = /[a-z][éèêçñüöä][a-z]|[ĀāŁłęąśżğışЀ-ӿ\u3040-\u30ff\u4e00-\u9fff]/u;

/** Bytes of UTF-8 (RFC 3629, section 4) shown one by one: a first byte of two to four, and those that follow. */
const RUNS: Readonly<Record<CodePage, RegExp>> = { '1252': runOf('1252'), '850': runOf('850') };

/**
 * The text with letters mended that were read in the wrong code page: UTF-8 as 1252 or 850, also twice over, and 850
 * as 1252 or the other way round. Only where it clearly is so; the lines stay the same.
 */
export function repaired(text: string): string {
  if (!NOT_ASCII.test(text)) return text;
  let mended = text;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = withoutRuns(mended);
    if (next === mended) break;
    mended = next;
  }
  return mended === text ? withoutMixUp(text) : mended;
}

/** By the code page that mends more: what is a run in one can be the middle of a longer one in the other. */
function withoutRuns(text: string): string {
  const [one, other] = [withoutRunsOf(text, '1252'), withoutRunsOf(text, '850')];
  return other.length < one.length ? other : one;
}

function withoutRunsOf(text: string, page: CodePage): string {
  return text.replace(RUNS[page], (run, at: number) => {
    const bytes = [...run].map((character) => upperByteOf(character, page) ?? 0);
    const meant = new TextDecoder('utf-8', { ignoreBOM: true }).decode(Uint8Array.from(bytes));
    return isLikely(meant) && !isQuoteEnd(text, at, run) ? meant : run;
  });
}

/** Letters of the languages that are met, signs of print, and the blank that French puts before a colon. */
function isLikely(meant: string): boolean {
  return /^[\u00a0-\u017f\u0219\u021b\u0400-\u045f\u2010-\u2027\u2030-\u203a\u20ac\u2122\u3000-\u30ff\u4e00-\u9fff\uff00-\uff5e\ufeff]$/u.test(
    meant,
  );
}

/** `MANHÃ»` is a word in quotes, unless small letters go on. */
function isQuoteEnd(text: string, at: number, run: string): boolean {
  if (!/^\p{Lu}[»«”“’‘…–—]$/u.test(run) || !/[A-Z]/.test(text.charAt(at - 1))) return false;
  return !/[\p{Ll}\u00c2-\u00c5]/u.test(text.charAt(at + run.length));
}

function withoutMixUp(text: string): string {
  if (READ_RIGHTLY.test(text)) return text;
  const found = MIXED_UP.find(({ sign }) => sign.test(text));
  if (found === undefined) return text;
  return text.replace(/[\u0080-\uffff]/g, (character) => {
    const byte = upperByteOf(character, found.read);
    return byte === undefined ? character : characterOf(byte, found.written);
  });
}

function runOf(page: CodePage): RegExp {
  const bytes = (from: number, to: number): string => {
    const length = to - from + 1;
    return `[${Array.from({ length }, (_, place) => characterOf(from + place, page)).join('')}]`;
  };
  const next = bytes(0x80, 0xbf);
  const two = `${bytes(0xc2, 0xdf)}${next}`;
  const three = `${bytes(0xe0, 0xef)}${next}{2}`;
  return new RegExp(`${two}|${three}|${bytes(0xf0, 0xf4)}${next}{3}`, 'gu');
}
