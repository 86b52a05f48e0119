import type { Address } from '../../values/address.js';
import { HAS } from '../looks.js';
import type { Line, Parser, Taken } from '../parser.js';
import { firstWhere, walk } from '../unix/walk.js';
import { address4, macOf } from '../unix/words.js';

const HEAD = /^ARPING (?:to )?(\d{1,3}(?:\.\d{1,3}){3})(?:\s|$)/;
/** `Unicast reply from 172.23.40.57 [02:00:5E:10:00:57]  0.732ms`, whose words are translated. */
const REPLY = /^\D{1,60} (\d{1,3}(?:\.\d{1,3}){3}) \[([0-9A-Fa-f:]{11,17})\]/;
/** `60 bytes from 02:00:5e:10:00:57 (172.23.40.57): index=0 time=1.2 msec`. */
const HABETS = /^\d{1,5} bytes from ([0-9a-f:]{11,17}) \((\d{1,3}(?:\.\d{1,3}){3})\): /i;
const END =
  /^(?:\D{1,40}\d{1,9} \p{L}{1,20}(?:\(\p{L}{1,6}\))?(?: \(.{1,80}\))?|\d{1,9} \p{L}{1,20}\(\p{L}{1,6}\) \p{L}{1,20})$/u;
const HABETS_END =
  /^(?:Timeout|--- \S{1,64} statistics ---|\d{1,9} packets transmitted, .{1,120}|rtt min\/avg\/max.{1,120})$/;

/** `arping` of iputils, of busybox and of Thomas Habets. */
export const arping: Parser = {
  name: 'arping',
  source: 'arping(8) of iputils and its message files (po/), of busybox, and of Thomas Habets',
  claims: (lines, from) =>
    firstWhere(lines, from, (text) => HEAD.test(text) || answerOf(text) !== undefined, HAS.digit),
  take,
};

function take(lines: readonly Line[], from: number): Taken {
  let address: Address | undefined;
  const macs = new Set<string>();
  const understood = walk(lines, from, (text, _line, index) => {
    const head = HEAD.exec(text)?.[1];
    if (head !== undefined) {
      if (index > from) return 'end';
      address = address4(head);
      return 'read';
    }
    const answer = answerOf(text);
    if (answer !== undefined) {
      address ??= answer.address;
      macs.add(answer.mac);
      return 'read';
    }
    return END.test(text) || HABETS_END.test(text) || text === '^C' ? 'read' : 'end';
  });
  const line = lines[from]?.number ?? 0;
  const arps = address === undefined ? [] : [{ address, macs: [...macs], line }];
  return { seen: { arps }, lines: understood };
}

function answerOf(text: string): { readonly address: Address; readonly mac: string } | undefined {
  // Asked of every line of a text: the quick look first.
  if (!text.includes(' [') && !text.includes(' bytes from ')) return undefined;
  const [, place, hardware] = REPLY.exec(text) ?? [];
  const [, hardwareFirst, placeSecond] = HABETS.exec(text) ?? [];
  const address = address4(place ?? placeSecond);
  const mac = macOf(hardware ?? hardwareFirst);
  return address === undefined || mac === undefined ? undefined : { address, mac };
}
