/** What the call itself says. */
export const CALL_WORDS = {
  'call.unknown-question':
    'There is no question "{question}" in this rule base. The record may belong to another version.',
  'call.unknown-remedy':
    'There is no remedy "{remedy}" in this rule base. The record may belong to another version.',
  'call.unknown-fault':
    'There is no spoilt check "{fault}" in this rule base. The record may belong to another version.',
  'call.unknown-place':
    'There is no place "{place}" in this rule base. The record may belong to another version.',
  'call.nothing-to-agree': 'The question "{question}" has no answer yet, so there is nothing to agree to.',
  'call.nothing-to-undo': 'There is nothing to go back to yet.',
  'call.yes': 'Yes',
  'call.no': 'No',
  'call.cant-tell': "Can't tell",
  'call.none-of-these': 'none of these',
  'call.number': '{number} {unit}',
  'call.percent': '{number}\u00a0%',
  'call.ask.opening': 'Question {number}, to begin with',
  'call.ask.heading': 'Question {number}',
  'call.ask.group': 'Question {number} (up to {left} that belong together)',
  'call.why.opening': 'Asked in every call: it decides which of the later questions make sense.',
  'call.why.closing': 'Someone will be sent. The next person has to know what was said to the caller.',
  'call.why.before': 'A quick look before "{remedy}" is tried: it may turn out to be something else.',
  'call.why.gate': 'Asked before "{remedy}" may be tried.',
  'call.why.soundness':
    'A check has failed. This says whether it was made in a way that counts; if not, it says nothing of the camera.',
  'call.why.together': 'With up to {count} answers this is settled: {title}.',
  'call.why.apart': 'It tells apart: {first} (now {firstNow}) and {second} (now {secondNow}).',
  'call.why.effect': 'If "{value}": the first {first}, the second {second}.',
  'call.why.mends': 'It would mend: {cause} (now {now}).',
  'call.read-back.heading-sum': 'Read this back',
  'call.read-back.heading-weight': 'Make sure of this',
  'call.read-back.say-weight':
    'I want to be sure of one thing. I asked: {prompt} You said: {answer}. Please look once more. Is that so?',
  'call.read-back.say-sum': 'I read it back, digit by digit. {title}: {answer}. Is that what you see?',
  'call.read-back.why-sum': 'A sum rests on this number. Read back and agreed, the sum is proven.',
  'call.read-back.why-weight':
    'Much hangs on this one answer, and one in twenty comes out wrong. A second look costs half a minute.',
  'call.read-back.agrees': 'Yes, the same',
  'call.read-back.differs': 'No, it reads otherwise',
  'call.read-back.leave': "Can't look now, go on without",
  'call.check.heading': 'Two answers do not go together',
  'call.check.help': 'Ask again, kindly. Nobody is to blame: one answer in twenty comes out wrong.',
  'call.check.change': 'Change "{title}" (now: {answer})',
  'call.check.keep': 'Both stay as they are',
  'call.spoilt.heading': 'The check itself needs a second look: {title}',
  'call.spoilt.help': 'Until this is put right, the check says nothing about the camera.',
  'call.spoilt.put-right': 'Put right, ask again',
  'call.spoilt.left': "Can't be put right, go on without this check",
  'call.try.heading': 'Try this: {title} ({place}, about {minutes} min)',
  'call.try.back': 'Done, and the picture is back',
  'call.try.stays': 'Done, and the picture is still there',
  'call.try.gone': 'Done, and the picture went away',
  'call.try.dark': 'Done, still no picture',
  'call.try.not-now': "Can't be done, show something else",
  'call.took.heading': 'Did it take?',
  'call.visit.heading': 'Someone has to go there',
  'call.visit.desk':
    'What is left can be done by phone only at more trouble than a visit. Labour about {minutes} min, waiting about {days} days.',
  'call.visit.site':
    'What is left needs more than is here. Come back with the things below. Labour about {minutes} min, waiting about {days} days.',
  'call.visit.do': 'To do there: {title}',
  'call.visit.bring': 'To bring: {item}',
  'call.visit.close': 'Close the call and write the ticket',
  'call.end.heading': 'The end of this call',
  'call.end.close': 'Close the call and write the ticket',
  'call.end.picture-back': 'Let the caller watch the live picture for a minute, on Wi-Fi and on mobile data.',
  'call.end.may-not-ask':
    'Explain kindly that only the owner, or somebody the owner names, can ask about this camera.',
  'call.end.out-of-scope':
    'Explain kindly that this guide covers stand-alone network cameras, and say who can help.',
} as const;
