import { colonAddresses } from '../ticket/masking/colon-addresses.js';
import { fold } from '../ticket/masking/fold.js';
import { hardwareAddresses } from '../ticket/masking/hardware-addresses.js';
import { serials } from '../ticket/masking/serials.js';
import { lastFour, type MaskRule, type Span, spansOf } from '../ticket/masking/span.js';

/** Kept of a pasted text, in characters: it is there to look a line up, not to be a log. */
const KEPT = 64_000;

const LINE = /[^\r\n\u2028\u2029]+/g;
const MAC = /^[0-9a-f]{1,2}(?::[0-9a-f]{1,2}){5,7}$/i;
/** What a MAC address leaves in an IPv6 address (RFC 4291, appendix A). */
const FROM_MAC = /ff:fe/i;
/** Client identifiers of DHCP hold one (RFC 2132, section 9.14; RFC 8415, section 11). */
const LONGER = /(?<![0-9A-Za-z:])[0-9a-f]{2}(?::[0-9a-f]{2}){6,}(?![0-9A-Za-z:])/gi;

const RULES: readonly MaskRule[] = [
  serials,
  hardwareAddresses,
  (text) =>
    colonAddresses(text).filter(({ start, end }) => {
      const found = text.slice(start, end);
      return MAC.test(found) || FROM_MAC.test(found);
    }),
  (text) => spansOf(text, LONGER, lastFour),
];

/**
 * A pasted text as a record keeps it: its first 64,000 characters in whole lines, serial numbers and MAC addresses
 * hidden but for their last four. The lines stay where they are.
 */
export function keptText(text: string): string {
  return wholeLines(text).replace(LINE, (line) =>
    RULES.reduce((now, rule) => hidden(now, rule(fold(now), '')), line),
  );
}

/** A cut within a number would leave a part that no longer looks like one. */
function wholeLines(text: string): string {
  if (text.length <= KEPT) return text;
  const cut = text.slice(0, KEPT);
  const end = Math.max(cut.lastIndexOf('\n'), cut.lastIndexOf('\r'));
  return end > 0 ? cut.slice(0, end) : cut;
}

function hidden(text: string, spans: readonly Span[]): string {
  const pieces: string[] = [];
  let from = 0;
  for (const { start, end, shown } of spans) {
    if (shown === undefined) continue;
    pieces.push(text.slice(from, start), shown);
    from = end;
  }
  return [...pieces, text.slice(from)].join('');
}
