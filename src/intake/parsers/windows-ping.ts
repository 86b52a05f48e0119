import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, type Step, shortText } from '../unix/walk.js';
import { WindowsPingDraft } from '../windows/ping-draft.js';
import { threeNumbers, type WindowsPingLine, windowsPingLine } from '../windows/ping-lines.js';
import { isStopped } from '../windows/ping-words.js';
import { nextIndex, walkWide } from '../windows/walk.js';

const UNREACHED: ReadonlySet<string | undefined> = new Set([
  'host-unreachable',
  'net-unreachable',
  'ttl-expired',
]);
const PROMPT = /^(?:PS )?[A-Za-z]:\\[^>]{0,200}>/;
/** `(25% lost)`, the end of it, or `Lost = 1 (25% lost)`. */
const LOST = /^\s*(?:[^\d:]{1,30}= ?\d{1,9} ?)?\(.{0,60}%|^\s{2,40}[^\d:]{1,40}\)[,、]?$/;
const MOST_STRANGE = 20;

/** `ping` of Windows, in any language. One ping at a time. */
export const windowsPing: Parser = {
  name: 'windows-ping',
  source:
    'replies and closing lines as published in most of the twelve languages; the rarer complaints from memory',
  claims: (lines, from) =>
    firstWhere(lines, from, (text, index) => begins(lines, text, index), HAS.colon, HAS.blank, HAS.foreign),
  take,
};

function begins(lines: readonly Line[], text: string, index: number): boolean {
  const said = windowsPingLine(text);
  if (said === undefined) return false;
  if (said.kind === 'refused') return UNREACHED.has(said.trouble);
  if (said.kind !== 'count' && said.kind !== 'trouble') return true;
  const at = nextIndex(lines, index);
  if (said.kind === 'count') return numbersAt(lines, at) !== undefined;
  const next = shortText(lines[at]);
  return /^\s*PING ?:/.test(text) || isRow(windowsPingLine(next));
}

function take(lines: readonly Line[], from: number): Taken {
  const draft = new WindowsPingDraft(lines[from]?.number ?? 0);
  const strange: number[] = [];
  let isClosing = false;
  let isLost = false;
  const understood = walkWide(lines, from, (text, line, index): Step => {
    if (isStopped(text)) return 'read';
    if (isLost) return index === from + 1 && isAdvice(shortText(lines[from]), text) ? 'read' : 'end';
    if (isClosing) return closingStep(draft, lines, text, index);
    const said = windowsPingLine(text);
    if (said === undefined) {
      strange.push(line);
      const mayBeTry =
        draft.hasHead && strange.length <= MOST_STRANGE && !/\d/.test(text) && !PROMPT.test(text);
      return mayBeTry ? 'pass' : 'end';
    }
    if (index > from && !goesOn(draft, said)) return 'end';
    draft.add(said, line);
    isLost = said.kind === 'no-such-name';
    isClosing = said.kind === 'count';
    return 'read';
  });
  // Between the first line and the closing ones stand only tries, in whatever words.
  if (draft.isCounted) for (const line of strange) understood.add(line);
  return { seen: { pings: [draft.ping()] }, lines: understood };
}

/** `und versuchen Sie es erneut.`: a sentence goes on, or the first line held but one. */
function isAdvice(above: string, text: string): boolean {
  const isOneSentence = above.endsWith('.') && !/[.。] /.test(above);
  return (isOneSentence ? /^\p{L}[^\d:]{0,80}\.$/u : /^\s?\p{Ll}[^\d:]{0,80}\.$/u).test(text);
}

function goesOn(draft: WindowsPingDraft, said: WindowsPingLine): boolean {
  if (said.kind === 'head' || said.kind === 'no-such-name') return false;
  if (said.kind === 'count') return draft.isOf(said.target, said.address);
  return said.kind !== 'reply' || draft.isOf(said.source, said.from);
}

/** The numbers below the line that announces them; the share lost can stand on a line of its own, or on two. */
function closingStep(draft: WindowsPingDraft, lines: readonly Line[], text: string, index: number): Step {
  if (draft.isTimed) return 'end';
  const numbers = numbersAt(lines, index);
  if (numbers !== undefined) {
    draft.addNumbers(...numbers);
    return 'read';
  }
  if (!draft.isCounted) return 'end';
  if (LOST.test(text)) return 'read';
  const isHead = text.endsWith(':') && !PROMPT.test(text);
  return isHead && numbersAt(lines, nextIndex(lines, index)) !== undefined ? 'read' : 'end';
}

/** Italian sets the lost ones on a line of their own. */
function numbersAt(lines: readonly Line[], index: number): readonly [number, number, number] | undefined {
  const text = shortText(lines[index]);
  if (windowsPingLine(text) !== undefined) return undefined;
  const next = text.endsWith(',') ? shortText(lines[index + 1]) : '';
  return threeNumbers(text) ?? threeNumbers(`${text}${next}`);
}

function isRow(said: WindowsPingLine | undefined): boolean {
  return said !== undefined && said.kind !== 'head' && said.kind !== 'no-such-name';
}
