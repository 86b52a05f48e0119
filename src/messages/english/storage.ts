/** The worked lines of the sums about recording, and the words that ask for their inputs. */
export const STORAGE_WORDS = {
  'storage.title': 'How long are recordings kept?',

  'storage.ask-main': 'Bit rate that is recorded, from the video settings, such as 4 Mbit/s',
  'storage.ask-audio': 'Bit rate of the sound, such as 64 kbit/s, or 0 where none is recorded',
  'storage.ask-hours': 'Hours a day in the schedule, such as 8 h, or 24/7',
  'storage.ask-events': 'Share of those hours in which something is recorded, such as 20 %; 100 % if always',
  'storage.ask-capacity': 'What the card or drive holds, as printed on it, such as 128 GB',
  'storage.ask-reserve': 'Share of it that recordings cannot use, such as 7 %',
  'storage.ask-days': 'How many days are wanted, such as 14 days',
  'storage.ask-date': 'The date, with the time if it is known, whose recording is missing',
  'storage.ask-today': 'Date and time now, where the camera is',
  'storage.ask-since': 'When recording began, or when the card was put in or emptied',
  'storage.ask-card-class': 'The speed class printed on the card',
  'storage.ask-rated': 'How much may be written to the card in all, by its maker, such as 64 TB',
  'storage.class-c2': 'Class 2',
  'storage.class-c4': 'Class 4',
  'storage.class-c6': 'Class 6',
  'storage.class-c10': 'Class 10',
  'storage.class-u1': 'U1',
  'storage.class-u3': 'U3',
  'storage.class-v6': 'V6',
  'storage.class-v10': 'V10',
  'storage.class-v30': 'V30',
  'storage.class-v60': 'V60',
  'storage.class-v90': 'V90',
  'storage.class-dont-know': "Don't know",
  'storage.rate-too-low': 'What is recorded takes at least {least}. Read the number and its unit again.',
  'storage.today-needed': 'To tell how old that date is, type the date and time now as well.',

  'storage.main-guessed': 'The bit rate is not known: {main} is what cameras usually record (judged).',
  'storage.recorded':
    'Recorded: {main} of picture and {audio} of sound, {hours} h a day, in {events} of that time.',
  'storage.recorded-silent':
    'Recorded: {main} of picture without sound, {hours} h a day, in {events} of that time.',
  'storage.a-day': 'That is {amount} a day (1 Mbit/s all day is 10.8 GB).',
  'storage.capacity':
    'The label says {gigabytes}. Many computers show {gibibytes} for it: 1 GiB is 1.0737 GB (IEC 80000-13).',
  'storage.usable': 'Less {reserve} that recordings cannot use, {amount} is left.',
  'storage.days-kept': 'So the oldest recording is written over after {days} days.',
  'storage.hours-kept': 'So the oldest recording is written over after {hours} hours.',
  'storage.days-enough': '{days} days are kept.',
  'storage.days-uncertain': 'Whether {days} days are kept is not certain.',
  'storage.days-too-few': '{days} days are not kept.',
  'storage.rate-for-days': 'A bit rate of {rate} or less keeps {days} days.',
  'storage.no-rate': 'No bit rate keeps {days} days: the sound alone takes more.',
  'storage.events-vary':
    'Recording on events only: a busy day fills more than a quiet one, and a quiet hour leaves nothing to find.',

  'storage.date-kept':
    '{date} is {age} days ago, and {kept} days are kept. It should be there: look at the schedule, at the events, and at what the clock of the camera said then.',
  'storage.date-written-over':
    '{date} is {age} days ago, and only {kept} days are kept. It has been written over.',
  'storage.date-perhaps': '{date} is {age} days ago, and {kept} days are kept. It may be there or not.',
  'storage.date-not-begun': '{date} is before {since}, when recording began. There was nothing to record to.',
  'storage.date-to-come': '{date} is still to come. Look at the clock of the camera.',

  'storage.class-enough':
    'A card of class {card} writes at least {megabytes} MB/s, {least} (SD Association). {rate} with bursts of twice that is no trouble for it.',
  'storage.class-short':
    'A card of class {card} writes at least {megabytes} MB/s, {least} (SD Association). {rate} with bursts of twice that (judged) may be too much for it.',
  'storage.wear': 'A year of it writes {terabytes}, which fills the card {fills} times.',
  'storage.wear-years': 'With {rated} TB rated by its maker it lasts {years} years.',
  'storage.wear-unrated':
    'A maker says how much may be written, or for how long to record, for cards meant for it. Cards without such a figure wear out first (common practice, no source).',
} as const;
