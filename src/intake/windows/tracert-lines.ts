import type { Address } from '../../values/address.js';
import type { Line } from '../parser.js';
import { remembered } from '../unix/remembered.js';
import { shortText } from '../unix/walk.js';
import { address4 } from '../unix/words.js';
import { type Target, targetIn } from './target-in.js';
import { HEADS } from './tracert-words.js';
import { nextIndex } from './walk.js';
import { smallLetters } from './word-between.js';

/** `<1 ms`, `12 ms`, `<1 毫秒` or a star. */
const PROBE = String.raw`(?:\*|<?\d{1,6} ?\p{L}{1,4}\.?)`;
const PLACE = String.raw`(?:\S{1,255} \[([0-9a-f.:]{2,45}(?:%\S{1,20})?)\]|(\d{1,3}(?:\.\d{1,3}){3}))`;
const ROW = new RegExp(String.raw`^\s{0,6}(\d{1,3})((?:\s{1,10}${PROBE}){3})(?:\s{1,10}(\S.{0,400}))?$`, 'u');
const PLACE_FIRST = new RegExp(`^${PLACE}(?=\\s|$)`, 'i');
/** `3  172.23.40.1  reports: Destination host unreachable.`: who complains stands in the place of the times. */
const COMPLAINT = new RegExp(
  String.raw`^\s{0,6}(\d{1,3})(?:\s{1,10}${PROBE}){0,2}\s{1,10}${PLACE}\s{1,6}\p{L}.{3,150}$`,
  'iu',
);
/** `1  General failure.`, `1  Transmit error: code 1231.` */
const FAILURE = new RegExp(
  String.raw`^\s{1,6}(\d{1,3})(?:\s{1,10}${PROBE}){0,2}\s{1,10}\p{L}[^[\]\d]{4,100}\d{0,5}\.?$`,
  'u',
);
const UNFINISHED = new RegExp(String.raw`^\s{0,6}\d{1,3}(?:\s{1,10}${PROBE}){1,2}\s{0,10}(?:\^C)?$`, 'u');
const CUT_ADDRESS = /^[0-9a-f.:]{1,40}\]$/i;
const COUNT = /(?:^|[^\d.])\d{1,3}(?:[^\d.]|\.?$)/;
const LONGEST_HEAD = 400;

export interface HopLine {
  readonly number: number;
  readonly address: Address | undefined;
}

/**
 * A hop with its three times or stars, and who answered. Alone it is sure only with an address, or with words behind
 * its stars.
 */
export function hopRow(text: string): (HopLine & { readonly isSure: boolean }) | undefined {
  const [, number, probes = '', tail = ''] = ROW.exec(text) ?? [];
  if (number === undefined) return undefined;
  const hasTimes = /\d/.test(probes);
  const [, inside, bare] = PLACE_FIRST.exec(tail) ?? [];
  const address = address4(inside ?? bare);
  return { number: Number(number), address, isSure: address !== undefined || (!hasTimes && tail !== '') };
}

/** A hop that complained or failed; only where it is the one that must come next. */
export function troubledHop(text: string, number: number): HopLine | undefined {
  const [, complained, inside, bare] = COMPLAINT.exec(text) ?? [];
  if (Number(complained) === number) return { number, address: address4(inside ?? bare) };
  return Number(FAILURE.exec(text)?.[1]) === number ? { number, address: undefined } : undefined;
}

/** A hop on which somebody stopped it. */
export function isUnfinished(text: string): boolean {
  return UNFINISHED.test(text);
}

/** The end of an address in brackets that the console pushed on to the next line; empty where there is none. */
export function restOfAddress(lines: readonly Line[], index: number): string {
  const next = shortText(lines[index + 1]);
  return CUT_ADDRESS.test(next) ? next : '';
}

export interface TracertHead {
  readonly target: Target;
  /** The index of its last line: the most hops are often named on a second one, or on the first. */
  readonly last: number;
}

/** The lines above the hops: they name a host and a count of hops. */
export function tracertHead(lines: readonly Line[], index: number): TracertHead | undefined {
  const one = headLine(shortText(lines[index]));
  if (one === undefined) return undefined;
  const next = nextIndex(lines, index);
  const two = headLine(shortText(lines[next]));
  const { target } = one;
  if (target !== undefined && (one.hasCount || one.isSaid || target.isNamed) && isFirstHop(lines, next))
    return { target, last: index };
  const isPair = two !== undefined && one.hasCount !== two.hasCount && (target ?? two.target) !== undefined;
  const isSplit = isPair && (target === undefined ? one.hasCount : two.hasCount && two.target === undefined);
  const named = target ?? two?.target;
  if (isSplit && named !== undefined && (one.isSaid || isFirstHop(lines, nextIndex(lines, next))))
    return { target: named, last: next };
  return target !== undefined && one.isSaid ? { target, last: index } : undefined;
}

interface HeadLine {
  readonly target: Target | undefined;
  readonly hasCount: boolean;
  readonly isSaid: boolean;
}

const headLine = remembered((text): HeadLine | undefined => {
  // A prompt has this sign.
  if (text === '' || text.length > LONGEST_HEAD || text.includes('>') || /^\s{0,6}\d{1,3}\s/.test(text))
    return undefined;
  if (!/\d/.test(text)) return undefined;
  const target = targetIn(text);
  const small = smallLetters(text);
  return {
    target,
    hasCount: COUNT.test(target?.rest ?? text),
    isSaid: HEADS.some((words) => small.includes(words)),
  };
});

function isFirstHop(lines: readonly Line[], index: number): boolean {
  if (index < 0) return false;
  const text = shortText(lines[index]);
  return hopRow(text)?.number === 1 || troubledHop(text, 1) !== undefined;
}
