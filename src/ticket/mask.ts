import { colonAddresses } from './masking/colon-addresses.js';
import { fold } from './masking/fold.js';
import { hardwareAddresses } from './masking/hardware-addresses.js';
import { internetAddresses } from './masking/internet-addresses.js';
import { legible, measured } from './masking/legible.js';
import { mailAddresses, webCredentials } from './masking/mail.js';
import { phones } from './masking/phones.js';
import { secrets } from './masking/secrets.js';
import { serials } from './masking/serials.js';
import { DONE, type MaskRule, type Span } from './masking/span.js';
import { tokens } from './masking/tokens.js';

/** In this order: what a rule has dealt with is out of sight of the rules after it. */
const RULES: readonly MaskRule[] = [
  webCredentials,
  secrets,
  mailAddresses,
  internetAddresses,
  colonAddresses,
  serials,
  hardwareAddresses,
  legible,
  measured,
  tokens,
  phones,
];

/** What is hidden can bring together what stood around it; one or two rounds more settle that. */
const MOST_ROUNDS = 8;

/**
 * Text with serial and MAC numbers hidden but for their last four, and public addresses (documentation ranges
 * count as public), e-mail addresses, phone numbers and keys hidden. Private addresses, masks, sums, dates,
 * versions and ids stay legible. `about` is the question that the text answers. Masking twice changes nothing.
 */
export function mask(text: string, about = ''): string {
  let masked = text;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const next = maskOnce(masked, about);
    if (next === masked) return next;
    masked = next;
  }
  return masked;
}

function maskOnce(text: string, about: string): string {
  let sight = fold(text);
  const hidden: Required<Span>[] = [];
  for (const rule of RULES) {
    const found = rule(sight, about);
    for (const { start, end, shown } of found) if (shown !== undefined) hidden.push({ start, end, shown });
    sight = withSpans(
      sight,
      found.map(({ start, end }) => ({ start, end, shown: DONE.repeat(end - start) })),
    );
  }
  return withSpans(
    text,
    hidden.sort((one, other) => one.start - other.start),
  );
}

function withSpans(text: string, spans: readonly Required<Span>[]): string {
  const pieces: string[] = [];
  let from = 0;
  for (const { start, end, shown } of spans) {
    pieces.push(text.slice(from, start), shown);
    from = end;
  }
  return [...pieces, text.slice(from)].join('');
}
