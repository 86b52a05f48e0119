import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, shortText } from '../unix/walk.js';
import {
  complaintOf,
  isAnswerName,
  isKnownTitle,
  isPrintedAddress,
  isSilence,
  serverBlock,
} from '../windows/nslookup-lines.js';
import { NslookupRun } from '../windows/nslookup-run.js';
import { nameAsked } from '../windows/prompt.js';
import { nextIndex, walkWide } from '../windows/walk.js';

const MOST_ABOVE = 3;
/** What was typed at its own prompt, whose sign reads as mail quoting. */
const LONE_NAME = /^(?:> ?)?((?:[\w-]{1,63}\.){1,20}[\w-]{1,63}\.?)$/;

/** `nslookup` of Windows, in any language, also with names typed at its own prompt. One lookup at a time. */
export const windowsNslookup: Parser = {
  name: 'windows-nslookup',
  source:
    'outputs published in English, German, French, Spanish, Portuguese, Italian, Russian, Chinese and Japanese; the other languages, and some complaints, from memory',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) => begins(lines, text, index),
      HAS.colon,
      HAS.blank,
      HAS.signs,
      HAS.foreign,
    ),
  take,
};

function begins(lines: readonly Line[], text: string, index: number): boolean {
  const block = serverBlock(lines, index);
  if (block !== undefined) return block.isDefault || block.isAnswered;
  if (isSilence(lines, index)) return true;
  // That of Unix says `No answer`, and other programs say other things behind three stars.
  if (text.startsWith('***')) return complaintOf(text, '')?.isKnown === true;
  if (!isKnownTitle(text)) return false;
  const next = nextIndex(lines, index);
  if (next < 0 || serverBlock(lines, next) !== undefined) return next >= 0;
  // That of Unix says the same in English, and prints the address otherwise.
  return isAnswerName(lines, next) && (isPrintedAddress(lines, nextIndex(lines, next)) || !isEnglish(text));
}

function isEnglish(text: string): boolean {
  return /^\s{0,4}Non-authoritative/i.test(text);
}

function take(lines: readonly Line[], from: number): Taken {
  const run = new NslookupRun(lines[from]?.number ?? 0, asked(lines, from));
  let isOver = false;
  const understood = walkWide(lines, from, (text, _line, index) => {
    if (isOver) return 'end';
    if (index > from && LONE_NAME.test(text)) {
      // The next one is asked: what follows is its answer.
      isOver = serverBlock(lines, nextIndex(lines, index)) !== undefined;
      if (isOver) return 'read';
    }
    return run.add(lines, text, index);
  });
  const lookup = run.lookup();
  return { seen: lookup === undefined ? {} : { lookups: [lookup] }, lines: understood };
}

/** What was asked, as the prompt right above says it: an answer that never came names nothing. */
function asked(lines: readonly Line[], from: number): string {
  for (let index = from - 1; index >= 0 && index >= from - MOST_ABOVE; index--) {
    const text = shortText(lines[index]);
    if (text === '') continue;
    return nameAsked(text) ?? LONE_NAME.exec(text)?.[1] ?? '';
  }
  return '';
}
