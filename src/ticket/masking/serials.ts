import { HIDDEN, type Span } from './span.js';

const NAMED =
  /(?<![0-9A-Za-z])(?:serial(?:[ -]?(?:numbers?|num|no|nr)\b\.?)?|s\/n|s\.n\.|sn|uid|uuid|imei|iccid|(?:device|p2p)[ -]id)(?![0-9A-Za-z])/gi;
/** Up to six plain words between the name and the number: `serial number on the label is`. */
const WORDS_BETWEEN = /^["')\]]{0,2}(?: ?[:=#-])?(?: ?[a-z']{1,12}(?![0-9A-Za-z])){0,6}(?: ?[:=#])? ?["'(]?/;
const NUMBER = /^[0-9A-Z][0-9A-Z_/-]*(?: (?!\d{4}-\d\d-\d\d)(?=[A-Z_/-]{0,12}\d)[0-9A-Z][0-9A-Z_/-]+)*/i;
const LEAST = 5;
const LONGEST = 160;

/** A number that is called a serial number, or that answers a question for one: its last four stay. */
export function serials(text: string, about: string): readonly Span[] {
  const places = [...text.matchAll(NAMED)].map(({ 0: name, index }) => index + name.length);
  const asked = [...about.matchAll(NAMED)].length > 0;
  const spans: Span[] = [];
  for (const place of asked ? [0, ...places] : places) {
    const span = place < (spans.at(-1)?.end ?? 0) ? undefined : numberAfter(text, place);
    if (span !== undefined) spans.push(span);
  }
  return spans;
}

function numberAfter(text: string, place: number): Span | undefined {
  const rest = text.slice(place, place + LONGEST);
  const between = WORDS_BETWEEN.exec(rest)?.[0].length ?? 0;
  const number = NUMBER.exec(rest.slice(between))?.[0];
  const plain = number?.replace(/[^0-9A-Za-z]/g, '') ?? '';
  if (number === undefined || plain.length < LEAST || !/\d/.test(plain)) return undefined;
  const start = place + between;
  return { start, end: start + number.length, shown: HIDDEN + plain.slice(-4) };
}
