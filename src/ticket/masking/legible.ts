import { type Span, spansOf } from './span.js';

/** What looks like a number to hide and is none. Dates with dots or slashes only where no further number follows. */
const LEGIBLE =
  /(?<![0-9A-Za-z])(?:\d{4}-\d\d-\d\d(?:[T _]?\d\d[:.]?\d\d(?:[:.]?\d\d)?Z?(?![0-9A-Za-z]))?|(?:19|20)\d\d(?:0[1-9]|1[0-2])(?:[0-2]\d|3[01])(?:[T_-]\d{4}(?:\d\d)?Z?)?(?![0-9A-Za-z])|(?:[0-3]?\d[./-][01]?\d|[01]?\d[./-][0-3]?\d)[./-](?:(?:19|20)\d\d|\d\d)(?![./-]?\d)|(?:[01]?\d|2[0-4])[.:][0-5]\d ?- ?(?:[01]?\d|2[0-4])[.:][0-5]\d(?!\d)|(?:19|20)\d\d ?- ?(?:19|20)\d\d(?!\d)|\d{3,5} ?x ?\d{3,5}(?!\d)|v\d[\w.-]{0,30}|(?:version|firmware|release|build|whydark) [\w.-]{0,30}\d[\w.-]{0,30}(?![\w])|digest:? [0-9a-f]{8,64}(?![0-9A-Za-z])|call(?: id)?:? (?=[0-9-]{0,40}[a-z])(?=[a-z-]{0,40}\d)[0-9a-z-]{4,40}(?![0-9A-Za-z]))/gi;
/** A number with a unit of more than one letter, alone or as the end of a range. */
const MEASURED =
  /(?<![0-9+(][ ./-]?|[A-Za-z])(?!0\d)\d{1,12}(?:[.,]\d{1,6})*(?: ?- ?\d{1,12}(?:[.,]\d{1,6})*)? ?(?:%|(?:bytes?|bits?|[kMGT]?bit(?:\/s)?|[kMG]bps|[kMGT]i?B|ms|min|minutes?|hours?|days?|seconds?|packets?|frames?|fps|px|pixels?)(?![0-9A-Za-z]))/gi;

/** Dates, times, versions, picture sizes and ids of calls: the rules after this one leave them alone. */
export function legible(text: string): readonly Span[] {
  return spansOf(text, LEGIBLE, () => 'legible');
}

/** Numbers with a unit: the rules after this one leave them alone. */
export function measured(text: string): readonly Span[] {
  return spansOf(text, MEASURED, () => 'legible');
}
