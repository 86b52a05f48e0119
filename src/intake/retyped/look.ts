import type { Line } from '../parser.js';
import { remembered } from '../unix/remembered.js';
import { type Bound, bind, type Label } from './bind.js';
import { byHandOf } from './by-hand.js';
import type { DEVICE_WORDS, LINK_WORDS } from './device-words.js';
import { nameIn } from './name-in.js';
import { type Token, tokensOf } from './tokens.js';

type Device = keyof typeof DEVICE_WORDS;

/** What a line by itself tells. */
export interface Looked {
  /** The line without the blanks around it. */
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly bounds: readonly Bound[];
  /** Values that cannot be what their words say they are. */
  readonly misfits: number;
  /** Nothing but a word that names the value on the line below, or above. */
  readonly label?: Label;
  /** Nothing but values that no word names. */
  readonly isLone: boolean;
  /** A few words that can stand over the lines of a device. */
  readonly heading?: { readonly name: string; readonly device?: Device };
  /** What was typed behind `name:`. */
  readonly called?: string;
  readonly isByHand?: boolean;
  readonly link?: keyof typeof LINK_WORDS;
  /** A sentence, or a try to reach an address: nothing in it is taken. */
  readonly isTalk: boolean;
}

const MOST_WORDS_OF_HEADING = 6;
const LONGEST_HEADING = 50;
/** More words than this that mean nothing here, and a line with no more than one value is a sentence. */
const MOST_STRANGERS = 3;
/** `Name: camera.example` is what a look-up prints. */
const DOMAIN = /^[\w-]{1,40}\.[\w.-]{1,80}$/;
const CALLED = /^[^:=]{1,30}[:=] ?(.{1,40})$/;

/** Nobody types more than this without a new line; tables and dumps do. */
const LONGEST_LINE = 2000;
/** Looks at one line; what depends on its neighbours is for `run` to say. */
export function lookAt({ text }: Line): Looked {
  return text.length > LONGEST_LINE ? TALK : sayingOf(text);
}

const TALK: Looked = { text: '', tokens: [], bounds: [], misfits: 0, isLone: false, isTalk: true };

/** A line is looked at as a claim and within a run, and pages have the same lines. */
const sayingOf = remembered((whole): Looked => {
  const text = whole.trim().replace(/ {2,}/g, ' ');
  const tokens = tokensOf(text);
  const called = tokens[0]?.type === 'name' ? CALLED.exec(text)?.[1] : undefined;
  const isTalk = isTalkOf(tokens, text) || (called !== undefined && DOMAIN.test(called));
  const bound = isTalk ? { bounds: [], misfits: 0 } : bind(tokens);
  const isByHand = isTalk ? undefined : byHandOf(tokens);
  const link = tokens.find((token) => token.type === 'link');
  const isNaked = bound.bounds.length === 0 && bound.misfits === 0 && isByHand === undefined && !isTalk;
  const isLabel = isNaked && bound.open !== undefined && isOnlyLabel(tokens);
  const heading = isNaked && called === undefined ? headingOf(tokens, text) : undefined;
  return {
    text,
    tokens,
    bounds: bound.bounds,
    misfits: bound.misfits,
    ...(isLabel && bound.open !== undefined ? { label: bound.open } : {}),
    isLone: !isTalk && bound.misfits === 0 && tokens.some(isValue) && tokens.every(isLoneToken),
    ...(heading === undefined ? {} : { heading }),
    ...(called === undefined ? {} : { called }),
    ...(isByHand === undefined ? {} : { isByHand }),
    ...(link?.type === 'link' ? { link: link.link } : {}),
    isTalk,
  };
});

function isTalkOf(tokens: readonly Token[], text: string): boolean {
  if (tokens.some((token) => token.type === 'try') || text.includes('://')) return true;
  const strangers = count(tokens, 'word');
  const values = tokens.filter((token) => token.type === 'value' && token.value.shape !== 'number').length;
  return strangers > MOST_STRANGERS + 2 * Math.max(0, values - 1);
}

/** Servers are numbered at times. */
function isOnlyLabel(tokens: readonly Token[]): boolean {
  return tokens.every(
    (token) =>
      ['field', 'device', 'filler', 'sign'].includes(token.type) ||
      (token.type === 'value' && token.value.shape === 'number'),
  );
}

function isValue(token: Token): boolean {
  return token.type === 'value';
}

function isLoneToken(token: Token): boolean {
  return isValue(token) || token.type === 'sign' || token.type === 'filler';
}

function headingOf(tokens: readonly Token[], text: string): Looked['heading'] {
  const words = tokens.filter((token) => token.type !== 'sign');
  if (words.length === 0 || words.length > MOST_WORDS_OF_HEADING || text.length > LONGEST_HEADING)
    return undefined;
  if (tokens.some((token) => token.type === 'field' || token.type === 'state')) return undefined;
  if (!words.some((token) => ['word', 'device', 'link'].includes(token.type))) return undefined;
  if (count(tokens, 'filler') > 1 || /[.?,;]$/.test(text) || /[:=] *[^ :=]/.test(text)) return undefined;
  const device = tokens.find((token) => token.type === 'device');
  return { name: nameIn(text), ...(device?.type === 'device' ? { device: device.device } : {}) };
}

function count(tokens: readonly Token[], type: Token['type']): number {
  return tokens.filter((token) => token.type === type).length;
}
