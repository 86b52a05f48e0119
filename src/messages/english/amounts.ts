/** What is said when an amount, a range, a choice or a date and time cannot be used as typed. */
export const AMOUNT_WORDS = {
  'amount.unit-missing': '"{text}" has no unit. Type the unit too, such as {example}.',
  'amount.unit-unknown': '"{text}" ends in {typed}, which does not fit here. Type it like {example}.',
  'amount.bits-or-bytes':
    '"{text}" may mean bytes or bits. Type kbit/s or Mbit/s for bits, such as {example}, or MB/s for bytes.',
  'amount.not-whole': '"{text}" is not a whole number. Type a whole number from {min} to {max}.',
  'amount.backwards':
    '"{text}" runs from the larger number to the smaller. Type the smaller one first, such as {low} to {high}.',
  'amount.share-unclear':
    '"{text}" may mean {percent} % or {small} %. Type it with the % sign, such as {percent} %.',
  'amount.not-a-choice': '"{text}" is none of the answers here. Type one of these: {choices}.',
  'amount.missing': 'This one is needed.',

  'moment.unclear':
    '"{text}" cannot be read as a date and time. Type it as year, month, day and time, such as 2026-11-25 14:30.',
  'moment.two-readings': '"{text}" can be read as {one} or as {other}. Type the one you mean.',
  'moment.no-such-day': '"{text}" names a day or a time that does not exist. Read it again.',
  'moment.year': '"{text}" is outside the years {min} to {max}. Read the year again.',
  'moment.zone-unclear':
    '"{text}" cannot be read as a time zone. Type the difference from UTC, such as +02:00 or -05:30, or UTC.',
} as const;
