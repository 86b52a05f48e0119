import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import {
  isBeforeBanner,
  isSilence,
  type LookupDraft,
  lookupDraft,
  lookupOf,
  outcomeOf,
  plainName,
  serverIn,
} from '../unix/lookup-words.js';
import { firstWhere, type Step, shortText, walk } from '../unix/walk.js';
import { address4, wordsOf } from '../unix/words.js';

const SERVER = /^Server:\s{1,20}(\S{1,255})$/;
/** With a port, or numbered as by older busybox; Windows has neither. */
const SERVER_PLACE =
  /^Address(?: \d{1,2})?:\s{1,20}(\d{1,3}(?:\.\d{1,3}){3})(?:[#:]\d{1,5})?(?:\s\S{1,255})?$/;
const UNIX_PLACE = /^Address(?: \d{1,2}:|:\s{1,20}\S{1,64}[#:]\d{1,5}$)/;
/** A quick look, as every line of a text is asked. */
const BEGINS = /^(?:Server:|;; |\*\* |nslookup: )/;
/** Said before the server is named. */
const GOT = /^;; Got [A-Z]{1,12} reply from \S/;
const NAME = /^Name:\s{1,20}(\S{1,255})$/;
const ANSWER = /^Address(?: \d{1,2})?:\s{1,20}(\S{1,64})(?:\s|$)/;
const CANNOT = /^\*\* server can't find (\S{1,255}): ([A-Z]{1,12})$/;
const NO_ANSWER = /^\*{3} Can't find (\S{1,255}): No answer$/;
const BUSYBOX = /^nslookup: can't resolve '([^']{1,255})'/;
const SMALL_TALK =
  /^(?:Non-authoritative answer:|\S{1,255}\s{1,20}canonical name = \S{1,255}|nslookup: write to '.{1,90}|\*{3} Can't find \S{1,255}: Parse error)$/;

/** `nslookup` of BIND and of busybox. That of Windows prints no port behind the server. */
export const unixNslookup: Parser = {
  name: 'unix-nslookup',
  source: 'nslookup(1) of BIND 9; busybox, networking/nslookup.c',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) => {
        if (!BEGINS.test(text)) return false;
        if (SERVER.test(text)) return UNIX_PLACE.test(shortText(lines[index + 1]));
        if (GOT.test(text)) return SERVER.test(shortText(lines[index + 1]));
        if (isSilence(text)) return !isBeforeBanner(lines, index);
        return CANNOT.test(text) || BUSYBOX.test(text);
      },
      HAS.colon,
      HAS.blank,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const draft = lookupDraft(lines[from]?.number ?? 0);
  let isServer = false;
  let begun = false;
  const understood = walk(lines, from, (text, _line, index) => {
    if (GOT.test(text)) return begun ? 'end' : 'read';
    if (draft.outcome === 'no-answer' && !isSilence(text)) return 'end';
    if (SERVER.test(text)) {
      if (begun || !UNIX_PLACE.test(shortText(lines[index + 1]))) return 'end';
      isServer = true;
      begun = true;
      return 'read';
    }
    const place = SERVER_PLACE.exec(text)?.[1];
    if (isServer && place !== undefined) {
      isServer = false;
      draft.server = address4(place);
      return 'read';
    }
    return readLine(draft, text);
  });
  return { seen: { lookups: [lookupOf(draft)] }, lines: understood };
}

function readLine(draft: LookupDraft, text: string): Step {
  const [, missing, code] = CANNOT.exec(text) ?? [];
  const name = NAME.exec(text)?.[1];
  const place = ANSWER.exec(text)?.[1];
  const busybox = BUSYBOX.exec(text)?.[1];
  const empty = NO_ANSWER.exec(text)?.[1];
  if (missing !== undefined && code !== undefined) {
    draft.name = plainName(missing);
    draft.outcome ??= outcomeOf(code);
  } else if (name !== undefined) {
    // Behind an alias the name that was asked is not said again.
    draft.name = draft.name === '' ? plainName(name) : draft.name;
  } else if (busybox !== undefined) {
    draft.name = plainName(busybox);
    draft.outcome = 'no-such-name';
  } else if (empty !== undefined) {
    draft.name = plainName(empty);
    draft.outcome = 'answered';
  } else if (place !== undefined && draft.name !== '') {
    const address = address4(place);
    if (address !== undefined) draft.addresses.push(address);
  } else if (isSilence(text) && (draft.outcome === undefined || draft.outcome === 'no-answer')) {
    draft.server ??= serverIn(text);
    draft.outcome = 'no-answer';
  } else if (SMALL_TALK.test(text)) {
    const [first = '', , second] = wordsOf(text);
    if (second === 'name' && draft.name === '') draft.name = plainName(first);
  } else {
    return 'end';
  }
  return 'read';
}
