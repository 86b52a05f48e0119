import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import {
  BANNER,
  isBeforeBanner,
  isSilence,
  type LookupDraft,
  lookupDraft,
  lookupOf,
  outcomeOf,
  plainName,
  serverIn,
} from '../unix/lookup-words.js';
import { firstWhere, type Step, walk } from '../unix/walk.js';
import { address4, wordsOf } from '../unix/words.js';

const STATUS = /^;; ->>HEADER<<- opcode: \w{1,10}, status: ([A-Z]{1,12}),/;
const QUESTION = /^;([^\s;]\S{0,254})\s{1,60}IN\s{1,8}([A-Z]{1,8})$/;
const SERVER = /^;; SERVER: \S/;
const RECORD = /^(\S{1,255})\s{1,60}\d{1,10}\s{1,8}IN\s{1,8}([A-Z0-9]{1,10})\s{1,8}(\S.{0,900})$/;

/** `dig`, one question with its answer. */
export const dig: Parser = {
  name: 'dig',
  source: 'dig(1) of BIND 9',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text, index) =>
        BANNER.test(text) || STATUS.test(text) || (isSilence(text) && isBeforeBanner(lines, index)),
      HAS.blank,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const draft = lookupDraft(lines[from]?.number ?? 0);
  let banners = 0;
  const understood = walk(lines, from, (text) => {
    if (BANNER.test(text)) {
      banners += 1;
      draft.name = plainName(nameInBanner(text));
    }
    return banners > 1 ? 'end' : readLine(draft, text);
  });
  return { seen: { lookups: [lookupOf(draft)] }, lines: understood };
}

function readLine(draft: LookupDraft, text: string): Step {
  const status = STATUS.exec(text)?.[1];
  const question = QUESTION.exec(text)?.[1];
  const [, , type, value] = RECORD.exec(text) ?? [];
  if (status !== undefined) draft.outcome = outcomeOf(status);
  else if (question !== undefined) draft.name = plainName(question);
  else if (SERVER.test(text)) draft.server = serverIn(text);
  else if (isSilence(text)) {
    draft.outcome ??= 'no-answer';
    draft.server ??= serverIn(text);
  } else if (type === 'A' && value !== undefined) {
    const address = address4(value);
    if (address !== undefined) draft.addresses.push(address);
  }
  return text.startsWith(';') || type !== undefined ? 'read' : 'end';
}

/** `; <<>> DiG 9.18.1 <<>> @172.23.40.1 camera.example`: the first word behind that is no option. */
function nameInBanner(text: string): string {
  const words = wordsOf(text.slice(text.lastIndexOf('<<>>') + 4));
  return words.find((word) => /^[^@+-]/.test(word) && !/^(?:A|AAAA|ANY|IN)$/.test(word)) ?? '';
}
