/** The worked lines of the sums about clocks, and the words that ask for their inputs. */
export const CLOCK_WORDS = {
  'clock.title': 'What does a wrong clock do?',

  'clock.ask-camera': 'Date and time that the camera shows, in the picture or on its page',
  'clock.ask-truth': 'The true date and time at that moment, where the camera is',
  'clock.ask-zone': 'Time zone of the site, as a difference from UTC, such as +02:00',
  'clock.ask-from': 'From when the certificate is valid (not before)',
  'clock.ask-until': 'Until when the certificate is valid (not after)',
  'clock.ask-window': 'How far off a sign-in may be, if the manual says; 5 min is usual',
  'clock.ask-event': 'True date and time of what is looked for in the recordings',
  'clock.until-before-from': 'The certificate would end before it begins. Read both dates again.',

  'clock.both-as-written': 'The camera shows {camera}, and it is {truth}: both as written, in one zone.',
  'clock.both-zoned': 'The camera shows {camera}, and it is {truth}: each in its own zone.',
  'clock.offset-none': 'The clock agrees, within {give}.',
  'clock.offset-ahead': 'The clock is ahead by {by}, give or take {give}.',
  'clock.offset-behind': 'The clock is behind by {by}, give or take {give}.',

  'clock.token-taken':
    'A sign-in made by that clock is taken: it may be {window} off (OASIS UsernameToken Profile 1.1.1 suggests 5 min at least).',
  'clock.token-doubtful':
    'Whether a sign-in made by that clock is taken is not certain: it may be {window} off. Read the seconds too.',
  'clock.token-refused':
    'A sign-in made by that clock is refused: it may be {window} off. On the phone that looks like a wrong password.',
  'clock.token-utc':
    'If only the zone of the display is wrong, the clock inside may still be right, and sign-in works.',

  'clock.by-camera': 'By the clock of the camera:',
  'clock.by-truth': 'By the true time:',
  'clock.certificate-valid': 'At {time} the certificate is valid.',
  'clock.certificate-not-yet': 'At {time} the certificate is not valid yet: it begins at {from} (RFC 5280).',
  'clock.certificate-expired':
    'At {time} the certificate is no longer valid: it ended at {until} (RFC 5280).',
  'clock.certificate-not-told':
    'Whether the certificate is valid at {time} depends on the time zone: certificates count in UTC.',
  'clock.clock-at-fault': 'The certificate is good. It is the clock that makes the camera refuse it.',
  'clock.certificate-at-fault': 'The certificate itself is at fault, whatever the clock says.',
  'clock.hides-expiry': 'The certificate is at fault, and the wrong clock hides it.',
  'clock.certificate-good': 'Neither the clock nor the dates of the certificate are in the way.',

  'clock.mistake-none': 'The clock is set well.',
  'clock.mistake-summer-time':
    'One hour looks like summer time: switched on where it should be off, or the other way round (judged).',
  'clock.mistake-half-day': 'Twelve hours look like morning taken for afternoon, or like a zone (judged).',
  'clock.mistake-zone': '{by} looks like a wrong time zone (judged).',
  'clock.mistake-date': 'Whole days look like a wrong date (judged).',
  'clock.mistake-never-set':
    'The clock started at its first day and was never set since: no time server was reached, and its battery may be flat (from memory).',
  'clock.mistake-drift':
    'That is no whole hour. The clock drifts and no time server sets it, or somebody set it by hand (judged).',

  'clock.look-at':
    'What happened at {event} stands in the recordings between {low} and {high}, if the clock was as wrong then as now.',
  'clock.look-at-other-day': 'That is under another day in part or in whole. Look there too.',
  'clock.note-first': 'Write down how far off the clock is before you set it, if recordings are needed.',
} as const;
