import type { Sentence } from '../../messages/say.js';
import { problem, type Result } from '../result.js';
import { quoted, tidy } from '../tidy.js';

/** The parts of a typed range, each still as typed. */
export type TypedRange =
  | { readonly kind: 'one'; readonly text: string }
  | { readonly kind: 'two'; readonly from: string; readonly to: string }
  | { readonly kind: 'give-or-take'; readonly middle: string; readonly off: string }
  | { readonly kind: 'at-most' | 'at-least'; readonly text: string };

const SEPARATOR = /\s*(?:\.{2,}|…|[-–—−]|(?<=[\s\d])(?:to|and|until)(?=[\s\d]))\s*/gi;
const GIVE_OR_TAKE = /^(.*\d.*?)\s*(?:±|\+ ?\/? ?[-−–])\s*(.*\d.*)$/;
const AT_MOST =
  /^(?:up to|at most|no more than|not more than|under|below|less than|max(?:imum|\.)?|<=?|≤)\s*/i;
const AT_LEAST = /^(?:at least|no less than|over|above|more than|min(?:imum|\.)?|>=?|≥)\s*/i;
const ABOUT =
  /^(?:about|around|approx(?:imately|\.)?|roughly|circa|ca\.?|nearly|almost|maybe|~|≈)\s*|\s(?:or so|ish|roughly|approx\.?)$/i;

/**
 * Takes a typed range apart: `60-90 m`, `between 60 and 90 m`, `60..90`, `80 ± 5 m`, `up to 90 m`, `over 60 m`,
 * or one value. Refuses `about 80 m`: how far off it may be is what counts.
 */
export function typedRange(text: string): Result<TypedRange> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const plain = tidied.value.replace(/^(?:between|from)\s+/i, '');
  if (ABOUT.test(plain)) return problem(about(text));
  const [, middle, off] = GIVE_OR_TAKE.exec(plain) ?? [];
  if (middle !== undefined && off !== undefined) return done({ kind: 'give-or-take', middle, off });
  if (AT_MOST.test(plain)) return done({ kind: 'at-most', text: plain.replace(AT_MOST, '') });
  if (AT_LEAST.test(plain)) return done({ kind: 'at-least', text: plain.replace(AT_LEAST, '') });
  for (const found of plain.matchAll(SEPARATOR)) {
    const [from, to] = [plain.slice(0, found.index), plain.slice(found.index + found[0].length)];
    if (/\d/.test(from) && /\d/.test(to)) return done({ kind: 'two', from, to });
  }
  return done({ kind: 'one', text: plain });
}

function done(value: TypedRange): Result<TypedRange> {
  return { ok: true, value };
}

function about(text: string): Sentence {
  return { id: 'measure.about', with: { text: quoted(text) } };
}
