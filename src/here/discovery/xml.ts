import { NO_PREFIXES, type Prefixes, type XmlName, xmlName } from './xml-names.js';
import { decoded, type Tag, tagAt } from './xml-tags.js';

/** An element with what stands in it. Attributes are read over, apart from those that declare prefixes. */
export interface XmlElement extends XmlName {
  readonly children: readonly XmlElement[];
  /** Its own text, that of its children left out. */
  readonly text: string;
  readonly prefixes: Prefixes;
}

/** No datagram is longer. */
const LONGEST = 65_536;
const DEEPEST = 32;
const DECLARATION = /^<\?xml [^<>?]{1,200}\?>/;
/** What no XML 1.0 document may hold (section 2.2). */
const FORBIDDEN = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

interface Draft extends XmlName {
  readonly written: string;
  readonly prefixes: Prefixes;
  readonly children: XmlElement[];
  text: string;
}

/**
 * Reads as much of XML 1.0 with namespaces as SOAP messages hold: elements, attributes, text, comments and the five
 * entities. A document type, any other entity, a section or an instruction makes it refuse the whole, as does whatever
 * is not well formed, over 64 KiB or over 32 elements deep. Looks at each character a fixed number of times; never throws.
 */
export function readXml(text: string): XmlElement | undefined {
  if (text.length > LONGEST) return undefined;
  // Some devices send the nought at the end of their string, too.
  const whole = text.replace(/^\ufeff/, '').replace(/\0{1,8}$/, '');
  if (FORBIDDEN.test(whole)) return undefined;
  const open: Draft[] = [];
  let root: XmlElement | undefined;
  for (let at = DECLARATION.exec(whole)?.[0].length ?? 0; at < whole.length; ) {
    const next = whole.indexOf('<', at);
    const upTo = next === -1 ? whole.length : next;
    if (!addText(whole.slice(at, upTo), open.at(-1))) return undefined;
    if (next === -1) break;
    if (whole.startsWith('<!--', next)) {
      const end = whole.indexOf('--', next + 4);
      if (end === -1 || whole[end + 2] !== '>') return undefined;
      at = end + 3;
      continue;
    }
    const tag = tagAt(whole, next);
    if (tag === undefined) return undefined;
    if (tag.kind !== 'close') {
      const draft = root === undefined ? draftOf(tag, open.at(-1)?.prefixes ?? NO_PREFIXES) : undefined;
      if (draft === undefined || open.length === DEEPEST) return undefined;
      open.push(draft);
    }
    if (tag.kind !== 'open') {
      const done = open.pop();
      if (done === undefined || done.written !== tag.name) return undefined;
      const around = open.at(-1);
      if (around === undefined) root = done;
      else around.children.push(done);
    }
    at = tag.end;
  }
  return open.length === 0 ? root : undefined;
}

/** Outside every element there may be blanks only. Says whether the text may stand there. */
function addText(raw: string, draft: Draft | undefined): boolean {
  if (draft === undefined) return !/[^ \t\r\n]/.test(raw);
  const text = raw.includes(']]>') ? undefined : decoded(raw);
  draft.text += text ?? '';
  return text !== undefined;
}

function draftOf({ name: written, attributes }: Tag, around: Prefixes): Draft | undefined {
  const prefixes = attributes.size === 0 ? around : prefixesIn(attributes, around);
  const name = xmlName(written, prefixes);
  return name === undefined ? undefined : { ...name, written, prefixes, children: [], text: '' };
}

function prefixesIn(attributes: ReadonlyMap<string, string>, around: Prefixes): Prefixes {
  const own = new Map<string, string>();
  for (const [name, value] of attributes) {
    if (name === 'xmlns') own.set('', value);
    else if (name.startsWith('xmlns:')) own.set(name.slice('xmlns:'.length), value);
  }
  return own.size === 0 ? around : { own, around };
}
