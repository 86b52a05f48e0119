import type { Line } from '../parser.js';
import type { Lookup } from '../seen.js';
import { plainName } from '../unix/lookup-words.js';
import { shortText } from '../unix/walk.js';
import { address4, address6 } from '../unix/words.js';
import {
  ADDRESS_LABELS,
  DEFAULT_SERVER_LABELS,
  NAME_LABELS,
  NO_ADDRESS,
  NOT_AUTHORITATIVE,
  NOT_FOUND,
  REASONS,
  SERVER_LABELS,
  SILENT,
} from './nslookup-words.js';
import { nextIndex } from './walk.js';
import { smallLetters, wordBetween } from './word-between.js';

const FIELD = /^ {0,8}([^\s:][^:]{0,40}?) ?: {0,12}(\S{1,255})$/;
/** As Windows prints it in any language: two blanks. */
const PRINTED_ADDRESS = /^Address(?:es)?: {2}\S/;
const STARS = /^ {0,4}\*{3} (\S.{3,300})$/;
const SECONDS = /^\s{2,12}\D{1,60}\d{1,3}\D{0,30}$/;
const TITLE = /^ {0,4}[^\s\d*>:][^\d:>]{3,80}:$/;
const DOTTED = /(?:^|\s)((?:[\w-]{1,63}\.){1,20}[\w-]{1,63})\.?(?=\s|$)/g;

export interface Labelled {
  readonly label: string;
  readonly value: string;
}

/** A label and one word behind it. */
export function labelled(text: string): Labelled | undefined {
  const [, label, value] = text.length > 400 || !text.includes(':') ? [] : (FIELD.exec(text) ?? []);
  return label === undefined || value === undefined ? undefined : { label: smallLetters(label), value };
}

export interface ServerBlock {
  readonly name: string;
  readonly address: string;
  /** Whether nothing was asked yet. */
  readonly isDefault: boolean;
  /** Whether an answer or a complaint stands below, in words or print that only nslookup has. */
  readonly isAnswered: boolean;
  readonly last: number;
}

/** The two lines that name the server; in a language of no table only by how they are printed, and above an answer. */
export function serverBlock(lines: readonly Line[], index: number): ServerBlock | undefined {
  const name = labelled(shortText(lines[index]));
  if (name === undefined) return undefined;
  const last = nextIndex(lines, index);
  const below = shortText(lines[last]);
  const address = labelled(below);
  if (address === undefined || !isAddress(address.value) || !ADDRESS_LABELS.has(address.label))
    return undefined;
  const isDefault = DEFAULT_SERVER_LABELS.has(name.label);
  const isNamed = isServerLabel(name.label);
  const isPrinted = isPrintedAddress(lines, last) && !NAME_LABELS.has(name.label);
  const isAnswered = isAnswerBelow(lines, last, isPrinted);
  if (!isNamed && !(isPrinted && isAnswered)) return undefined;
  return { name: name.value, address: address.value, isDefault, isAnswered, last };
}

/** Whether an address is printed as Windows prints it. */
export function isPrintedAddress(lines: readonly Line[], index: number): boolean {
  return PRINTED_ADDRESS.test(shortText(lines[index]));
}

/** People list servers, names and addresses, too: only print tells an answer of no known words apart from that. */
function isAnswerBelow(lines: readonly Line[], index: number, isPrinted: boolean): boolean {
  const next = nextIndex(lines, index);
  if (next < 0) return false;
  const text = shortText(lines[next]);
  if (isKnownTitle(text) || STARS.test(text) || isSilence(lines, next)) return true;
  return isPrinted && (isAnswerTitle(text) || isAnswerName(lines, next) || isRecord(text));
}

/** The name that an answer begins with, above its address. */
export function isAnswerName(lines: readonly Line[], index: number): boolean {
  if (labelled(shortText(lines[index])) === undefined) return false;
  const below = labelled(shortText(lines[nextIndex(lines, index)]));
  return below !== undefined && ADDRESS_LABELS.has(below.label) && isAddress(below.value);
}

/** `Non-authoritative answer:`, in whatever language. */
export function isAnswerTitle(text: string): boolean {
  return TITLE.test(text);
}

/** The same where the language is known. */
export function isKnownTitle(text: string): boolean {
  if (!TITLE.test(text)) return false;
  const small = smallLetters(text);
  return NOT_AUTHORITATIVE.some((words) => small.includes(words));
}

/** `DNS request timed out.` above `    timeout was 2 seconds.` */
export function isSilence(lines: readonly Line[], index: number): boolean {
  const text = shortText(lines[index]);
  if (text.length > 120 || !/[.。]$/.test(text) || /^\s|\d/.test(text)) return false;
  const small = smallLetters(text);
  const isSaid = /DNS/.test(text) || SILENT.some((words) => small.includes(words));
  return isSaid && SECONDS.test(shortText(lines[index + 1]));
}

/** Whether a label is that of the server. */
export function isServerLabel(label: string): boolean {
  return SERVER_LABELS.has(label) || DEFAULT_SERVER_LABELS.has(label);
}

/** `cam.example  nameserver = ns.example`, as answers of other kinds are printed. */
export function isRecord(text: string): boolean {
  return text.length < 400 && /^\s{0,10}\S{1,255}(?:\s{1,12}\S{1,40}){1,4} = ?\S{0,255}/.test(text);
}

export interface Complaint {
  /** Empty where it names none. */
  readonly name: string;
  readonly outcome: Lookup['outcome'];
  /** Whether the reason is one of those that nslookup gives. */
  readonly isKnown: boolean;
}

/** `*** router.example can't find nosuch.example: Non-existent domain`. */
export function complaintOf(text: string, server: string): Complaint | undefined {
  const said = STARS.exec(text)?.[1];
  if (said === undefined) return undefined;
  const empty = wordBetween(said, NO_ADDRESS);
  if (empty !== undefined) return { name: plainName(empty), outcome: 'answered', isKnown: true };
  const colon = said.lastIndexOf(':');
  const reason = smallLetters(colon < 0 ? said : said.slice(colon));
  const outcome = REASONS.find(([, table]) => table.some((words) => reason.includes(words)))?.[0];
  return {
    name: colon < 0 ? '' : nameIn(said.slice(0, colon), server),
    outcome: outcome ?? 'failed',
    isKnown: outcome !== undefined,
  };
}

/** The complaint that the server itself has no name, which says nothing of what was asked. */
export function isOfServer({ name }: Complaint): boolean {
  return address4(name) !== undefined || address6(name) !== undefined;
}

function nameIn(said: string, server: string): string {
  const known = wordBetween(said, NOT_FOUND);
  if (known !== undefined) return plainName(known);
  const names = [...said.matchAll(DOTTED)].map(([, name]) => name ?? '').filter((name) => name !== server);
  return names.at(-1) ?? '';
}

export function isAddress(value: string): boolean {
  return address4(value) !== undefined || address6(value) !== undefined;
}
