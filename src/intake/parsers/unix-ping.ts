import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { PingDraft } from '../unix/ping-draft.js';
import { type PingLine, pingLine } from '../unix/ping-lines.js';
import { isPrompt } from '../unix/prompt.js';
import { firstWhere, walk } from '../unix/walk.js';

const CLOSING =
  /^--- (?:(\S{1,255}) \D{0,40}ping\b.{0,60}|.{0,60}\bping\D{0,40} (\S{1,255})|.{1,300}\bping\b.{0,60}) ---$/i;
const PIPE = /^,? ?(?:pipe|tuyau) \d{1,9}$/;
const MOST_STRANGE = 3;

/** `ping` of iputils, busybox, inetutils, macOS and the BSDs, in any language. One ping at a time. */
export const unixPing: Parser = {
  name: 'unix-ping',
  source: 'ping(8) of iputils, busybox, macOS and FreeBSD; the message files of iputils (po/)',
  claims: (lines, from) =>
    firstWhere(lines, from, begins, HAS.colon, HAS.round, HAS.signs, HAS.digit | HAS.blank),
  take,
};

function begins(text: string): boolean {
  const said = pingLine(text);
  return (said !== undefined && said.kind !== 'noise') || CLOSING.test(text);
}

function take(lines: readonly Line[], from: number): Taken {
  const draft = new PingDraft(lines[from]?.number ?? 0);
  let isClosing = false;
  let strange = 0;
  let isOver = false;
  const understood = walk(lines, from, (text, line, index) => {
    const closing = CLOSING.exec(text);
    if (closing !== null && !isClosing) {
      isClosing = true;
      draft.name(closing[1] ?? closing[2] ?? '');
      return 'read';
    }
    if (isClosing && !draft.isCounted && draft.addCounts(text)) return 'read';
    if (isClosing && draft.isCounted && (PIPE.test(text) || draft.addTimes(text))) return 'read';
    const said = isClosing && draft.isCounted ? undefined : pingLine(text);
    if (isOver || (index > from && said !== undefined && isWhole(said, draft))) return 'end';
    isOver = said !== undefined && said.kind === 'complaint' && isWhole(said, draft);
    if (said !== undefined) {
      strange = 0;
      draft.add(said, text, line);
      return 'read';
    }
    strange += 1;
    return draft.isCounted || isPrompt(text) || strange > MOST_STRANGE ? 'end' : 'pass';
  });
  return { seen: { pings: [draft.ping()] }, lines: understood };
}

/** Whether a line begins another ping: a head, or a complaint with which a ping ended before it sent anything. */
function isWhole(said: PingLine, draft: PingDraft): boolean {
  if (said.kind === 'head') return true;
  return said.kind === 'complaint' && !draft.hasHead && !/^(?:sendto|sendmsg): /.test(said.text);
}
