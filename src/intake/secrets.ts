import { parseAddress } from '../values/address.js';
import { parseAddress6 } from '../values/address6.js';
import { folded } from './retyped/fold.js';
import { SAYS, SECRET_WORDS, SPEAKS_OF_IT } from './secret-words.js';

const DROPPED = '[dropped]';

/** The text without what must not be kept, and how many things were taken out. */
export interface WithoutSecrets {
  readonly text: string;
  readonly dropped: number;
}

interface Span {
  readonly start: number;
  readonly end: number;
}

const ASCII = /^[ -~\t]*$/;
/** A name of a secret, what gives it, and one letter of it. */
const SHORTEST = 4;
const LINE = /[^\r\n\u2028\u2029]+/g;

const SECRET = named([...SECRET_WORDS.secrets, ...SECRET_WORDS.users]);
const HOST = named(SECRET_WORDS.hosts);
const SAYS_IT = new RegExp(`^ (?:${alternatives(SAYS)})(?: |(?=[^a-z]))`);
const SPEAKS = new Set(SPEAKS_OF_IT.flatMap((row) => row.split(', ')));

/** A dotted leader, a column or a bracket, then a colon, an equals sign or an arrow. */
const GIVES = /^["')\]]{0,2}[ .]{0,80}(?:[:=]>?|->|→) ?/;
/** Further words of the label of Windows: `DNS Suffix Search List. . . :`. */
const GIVES_LATER = /^[^:=]{0,60}[:=] ?/;
/** Where a value in the middle of a line ends: what follows is something else. */
const VALUE_END =
  /[,;](?: |$)| {2}| (?=(?:ipv?[46]?|address|adresse|mask|gateway|gw|dns|dhcp|port|user(?:name)?|pass(?:word)?|pin)(?:[ :=]|$))| (?=\d{1,3}\.\d{1,3}\.\d{1,3}\.)/;
/** The value that was wrapped on to a line of its own, or goes on there. */
const LONE = /^\s{3,}([^\s:=]{1,100})\s*$/;

const FOLDER =
  /(?:[a-z]:)?[\\/](?:users|home|documents and settings|dokumente und einstellungen)[\\/]((?!public|all users|default)[^\\/:*?"<>|\s](?:[^\\/:*?"<>|]{0,62}(?=[\\/>])|[^\\/:*?"<>|\s]{0,62}))/g;
const PROMPT =
  /^[ \t>|]{0,8}[[(]?([^\s@:[\]()]{1,32}@[^\s@:[\]()]{1,64})(?=[: \])][^$#%>]{0,200}[$#%>](?: |$))/;
/** `name@host` of the shell that macOS had before: `host:~ name$`. */
const OLD_PROMPT = /^[ \t>|]{0,8}([\w.-]{1,64}):[^ $]{1,200} ([\w.-]{1,32})[$#](?: |$)/;
const CREDENTIALS = /:\/\/([^\s/@]{1,200})@/g;
const OPTION = /(?<=\bcurl\b.{0,200} (?:-u|--user)[ =]?)\S{1,200}/g;
/** Lines of resolv.conf(5). */
const SEARCHED = /^\s*(?:search|domain)\s+([\w-]*\.[\w.-]*(?: [\w.-]+){0,7})$/;

/**
 * Takes out what must not be kept before anything is: keys, passwords, PINs and community strings, the names of
 * people and of their computers, in folders and prompts and behind their labels. The lines stay where they are.
 * Doing it twice changes nothing.
 */
export function withoutSecrets(text: string): WithoutSecrets {
  let dropped = 0;
  let isOpen = false;
  const kept = text.replace(LINE, (line) => {
    const found = spansOf(line, isOpen);
    isOpen = found.isOpen;
    dropped += found.spans.length;
    return without(line, found.spans);
  });
  return { text: kept, dropped };
}

function spansOf(
  line: string,
  isOpen: boolean,
): { readonly spans: readonly Span[]; readonly isOpen: boolean } {
  if (line.length < SHORTEST) return { spans: [], isOpen: false };
  const plain = folded(ASCII.test(line) ? line.replaceAll('`', "'") : withPlainSigns(line));
  const wrapped = isOpen ? LONE.exec(plain) : null;
  if (wrapped?.[1] !== undefined) {
    const start = plain.indexOf(wrapped[1]);
    const isKept = isAddress(wrapped[1]) || wrapped[1] === DROPPED;
    return { spans: isKept ? [] : [{ start, end: start + wrapped[1].length }], isOpen: true };
  }
  const hosts = behindHosts(plain);
  const spans = [
    ...(/[\\/]/.test(plain) ? groups(plain, FOLDER) : []),
    ...(/[$#%>]/.test(plain) ? atStart(plain) : []),
    ...(plain.includes('://') ? groups(plain, CREDENTIALS) : []),
    ...(plain.includes('curl') ? options(plain) : []),
    ...hosts.spans,
    ...behindSecrets(plain),
  ];
  return { spans: tidied(plain, spans), isOpen: hosts.isOpen };
}

function withPlainSigns(line: string): string {
  return line
    .replace(/[\u00a0\u202f\u3000]/g, ' ')
    .replace(/\uff1a/g, ':')
    .replace(/\uff1d/g, '=')
    .replace(/[’`´]/g, "'");
}

/** Behind the first label of a host the rest of the clause goes; with nothing there, or after it, a lone line. */
function behindHosts(plain: string): { readonly spans: readonly Span[]; readonly isOpen: boolean } {
  const searched = /^\s*(?:search|domain)/.test(plain)
    ? SEARCHED.exec(plain.slice(0, 400).trimEnd())?.[1]
    : undefined;
  if (searched !== undefined) return { spans: [last(plain, searched)], isOpen: false };
  if (!/[:=→]|->/.test(plain)) return { spans: [], isOpen: false };
  const words = spacedOut(plain);
  HOST.lastIndex = 0;
  const label = HOST.exec(words);
  if (label === null) return { spans: [], isOpen: false };
  const from = label.index + label[0].length;
  const gives = (GIVES.exec(plain.slice(from, from + 100)) ??
    GIVES_LATER.exec(plain.slice(from, from + 100)))?.[0];
  if (gives === undefined) return { spans: [], isOpen: false };
  return { spans: valueAt(plain, from + gives.length), isOpen: true };
}

function behindSecrets(plain: string): readonly Span[] {
  const words = spacedOut(plain);
  const spans: Span[] = [];
  SECRET.lastIndex = 0;
  for (let label = SECRET.exec(words); label !== null; label = SECRET.exec(words)) {
    const from = label.index + label[0].length;
    const rest = plain.slice(from, from + 100);
    const gives = GIVES.exec(rest)?.[0];
    const says = SAYS_IT.exec(rest)?.[0] ?? /^[是为は]/.exec(rest)?.[0];
    if (gives !== undefined) spans.push(...valueAt(plain, from + gives.length));
    else if (says !== undefined) spans.push(...wordAt(plain, from + says.length, false));
    else if (rest.startsWith(' ')) spans.push(...wordAt(plain, from + 1, true));
    SECRET.lastIndex = Math.max(SECRET.lastIndex, spans.at(-1)?.end ?? 0);
  }
  return spans;
}

/** Up to where something else begins; a quoted value whole. */
function valueAt(plain: string, from: number): readonly Span[] {
  const rest = plain.slice(from);
  const quoted = /^ {0,8}"[^"]{1,200}"/.exec(rest)?.[0];
  const start = from + (/^ */.exec(rest)?.[0].length ?? 0);
  const ends = quoted === undefined ? plain.slice(start).search(VALUE_END) : quoted.length - (start - from);
  const value = plain.slice(start, ends === -1 ? plain.length : start + ends).trimEnd();
  return value === '' || isAddress(value) ? [] : [{ start, end: start + value.length }];
}

/** The next word; where nothing says that it is the secret, only if it looks made up. */
function wordAt(plain: string, from: number, mustLookMadeUp: boolean): readonly Span[] {
  const word = /^\S{1,200}/.exec(plain.slice(from, from + 200))?.[0];
  const bare = word?.replace(/[.,;:)"']{1,9}$/, '') ?? '';
  if (bare === '' || SPEAKS.has(bare)) return [];
  const looksMadeUp = /\d/.test(bare) || /[a-z][!@#$%^&*+=?~]/.test(bare);
  return (mustLookMadeUp && !looksMadeUp) || isAddress(bare)
    ? []
    : [{ start: from, end: from + bare.length }];
}

function options(plain: string): readonly Span[] {
  return [...plain.matchAll(OPTION)].map(({ 0: found, index }) => ({
    start: index,
    end: index + found.length,
  }));
}

const LONGEST_WORD = 5;

function isAddress(value: string): boolean {
  // Without a digit or a colon only the words for an empty field are one, and they are short.
  if (value.length >= 64 || (value.length > LONGEST_WORD && !/[\d:]/.test(value))) return false;
  return parseAddress(value).ok || parseAddress6(value).ok;
}

function atStart(plain: string): readonly Span[] {
  const now = PROMPT.exec(plain)?.[1];
  if (now !== undefined) return [first(plain, now)];
  const [, host, name] = OLD_PROMPT.exec(plain) ?? [];
  if (host === undefined || name === undefined) return [];
  const before = first(plain, host);
  const start = plain.indexOf(` ${name}`, before.end) + 1;
  return [before, { start, end: start + name.length }];
}

function groups(plain: string, pattern: RegExp): readonly Span[] {
  return [...plain.matchAll(pattern)].flatMap(({ 0: found, 1: part, index }) => {
    if (part === undefined) return [];
    const start = index + found.lastIndexOf(part);
    return [{ start, end: start + part.length }];
  });
}

function first(plain: string, part: string): Span {
  const start = plain.indexOf(part);
  return { start, end: start + part.length };
}

function last(plain: string, part: string): Span {
  const start = plain.lastIndexOf(part);
  return { start, end: start + part.length };
}

/** In order, none within another, and nothing that is gone already. */
function tidied(plain: string, spans: readonly Span[]): readonly Span[] {
  const sorted = [...spans].sort((one, other) => one.start - other.start || other.end - one.end);
  const kept: Span[] = [];
  for (const span of sorted) {
    const isWithin = span.start < (kept.at(-1)?.end ?? 0);
    const isGone = plain.slice(span.start, span.end).includes(DROPPED);
    if (!isWithin && !isGone) kept.push(span);
  }
  return kept;
}

function without(line: string, spans: readonly Span[]): string {
  const pieces: string[] = [];
  let from = 0;
  for (const { start, end } of spans) {
    pieces.push(line.slice(from, start), DROPPED);
    from = end;
  }
  return [...pieces, line.slice(from)].join('');
}

function spacedOut(plain: string): string {
  return plain.replace(/[-_/']/g, ' ');
}

function named(rows: readonly string[]): RegExp {
  return new RegExp(`(?<![a-z0-9\\u0430-\\u045f])(?:${alternatives(rows)})(?![a-z0-9\\u0430-\\u045f])`, 'g');
}

function alternatives(rows: readonly string[]): string {
  const words = rows.flatMap((row) => row.split(', ')).map((word) => spacedOut(folded(word)));
  return [...new Set(words)].sort((one, other) => other.length - one.length).join('|');
}
