import { type Span, spansOf } from './span.js';

const MONTH = '(?:0[1-9]|1[0-2])';
const DAY = '(?:[0-2]\\d|3[01])';
const CLOCK = '(?:[01]?\\d|2[0-4])[.:][0-5]\\d';
const WORD_END = '(?![0-9A-Za-z])';

/** Dates with dots or slashes only where no further number follows: a phone number can begin like one. */
const LEGIBLE = new RegExp(
  `(?<![0-9A-Za-z])(?:${[
    `\\d{4}-\\d\\d-\\d\\d(?:[T _]?\\d\\d[:.]?\\d\\d(?:[:.]?\\d\\d)?Z?${WORD_END})?`,
    `(?:19|20)\\d\\d${MONTH}${DAY}(?:[T_-]\\d{4}(?:\\d\\d)?Z?)?${WORD_END}`,
    '(?:[0-3]?\\d[./-][01]?\\d|[01]?\\d[./-][0-3]?\\d)[./-](?:(?:19|20)\\d\\d|\\d\\d)(?![./-]?\\d)',
    `${CLOCK} ?- ?${CLOCK}(?!\\d)`,
    '(?:19|20)\\d\\d ?- ?(?:19|20)\\d\\d(?!\\d)',
    '\\d{3,5} ?x ?\\d{3,5}(?!\\d)',
    'v\\d[\\w.-]{0,30}',
    '(?:version|firmware|release|build|whydark) [\\w.-]{0,30}\\d[\\w.-]{0,30}(?!\\w)',
    `digest:? [0-9a-f]{8,64}${WORD_END}`,
    `call(?: id)?:? (?=[0-9-]{0,40}[a-z])(?=[a-z-]{0,40}\\d)[0-9a-z-]{4,40}${WORD_END}`,
  ].join('|')})`,
  'gi',
);

const NUMBER = '\\d{1,12}(?:[.,]\\d{1,6})*';
/** Of more than one letter: a single one may begin the next word. */
const UNITS =
  'bytes?|bits?|[kMGT]?bit(?:\\/s)?|[kMG]bps|[kMGT]i?B|ms|min|minutes?|hours?|days?|seconds?|packets?|frames?|fps|px|pixels?';
/** Neither behind another number nor with a nought in front, as the last group of a phone number would be. */
const MEASURED = new RegExp(
  `(?<![0-9+(][ ./-]?|[A-Za-z])(?!0\\d)${NUMBER}(?: ?- ?${NUMBER})? ?(?:%|(?:${UNITS})${WORD_END})`,
  'gi',
);

/** Dates, times, versions, picture sizes and ids of calls: the rules after this one leave them alone. */
export function legible(text: string): readonly Span[] {
  return spansOf(text, LEGIBLE, () => 'legible');
}

/** Numbers with a unit: the rules after this one leave them alone. */
export function measured(text: string): readonly Span[] {
  return spansOf(text, MEASURED, () => 'legible');
}
