import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import {
  isSilence,
  type LookupDraft,
  lookupDraft,
  lookupOf,
  outcomeOf,
  plainName,
  serverIn,
} from '../unix/lookup-words.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4 } from '../unix/words.js';

const SERVER_HEAD = /^Using domain server:$/;
const SERVER_MORE = /^(?:Name|Address|Aliases):(?: |$)/;
/** With a dot in the name: a person, too, can write that the camera has address so and so. */
const ANSWER = /^(\S{1,200}\.\S{1,60}) has address (\d{1,3}(?:\.\d{1,3}){3})$/;
const OTHER =
  /^(\S{1,255}) (?:has IPv6 address|mail is handled by|is an alias for|has no A record|has no AAAA record)\b/;
const FAILED = /^Host (\S{1,255}) not found: \d{1,3}\(([A-Z]{1,12})\)$/;

/** `host`. Its answers, however many lines, become one lookup a name. */
export const host: Parser = {
  name: 'host',
  source: 'host(1) of BIND 9',
  claims: (lines, from) =>
    firstWhere(
      lines,
      from,
      (text) => SERVER_HEAD.test(text) || ANSWER.test(text) || FAILED.test(text) || OTHER.test(text),
      HAS.blank,
    ),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  const drafts: LookupDraft[] = [];
  let server: Address | undefined;
  const named = (name: string, line: number): LookupDraft => {
    const last = drafts.at(-1);
    if (last !== undefined && (last.name === plainName(name) || last.outcome === undefined)) return last;
    const draft = { ...lookupDraft(line), name: plainName(name), server };
    drafts.push(draft);
    return draft;
  };
  const understood = walk(lines, from, (text, line, index) => {
    const [, name, place] = ANSWER.exec(text) ?? [];
    const [, missing, code] = FAILED.exec(text) ?? [];
    const other = OTHER.exec(text)?.[1];
    if (SERVER_HEAD.test(text)) return index === from ? 'read' : 'end';
    if (SERVER_MORE.test(text) && drafts.length === 0) {
      server = serverIn(text) ?? server;
    } else if (name !== undefined) {
      const draft = named(name, line);
      const address = address4(place);
      if (address !== undefined) draft.addresses.push(address);
      draft.outcome = 'answered';
    } else if (missing !== undefined && code !== undefined) {
      named(missing, line).outcome = outcomeOf(code);
    } else if (other !== undefined) {
      // An alias is followed by the name that has the address: the one that was asked stands first.
      named(other, line).outcome = text.includes(' is an alias for ') ? undefined : 'answered';
    } else if (isSilence(text)) {
      named('', line).outcome = 'no-answer';
    } else {
      return 'end';
    }
    return 'read';
  });
  return { seen: { lookups: drafts.map(lookupOf) }, lines: understood };
}
