/** What the terminal says around a call. */
export const CLI_WORDS = {
  'cli.usage': `whydark finds out why the picture of a network camera is dark on the phone.

  whydark call                    hold a call, or go on with an unfinished one
  whydark diagnose FILE           diagnose from a file of answers (- reads standard input)
  whydark questions               list the questions with their ids and answers
  whydark replay RECORD           play a call record again, step by step
  whydark ticket RECORD           write the ticket of a call record
  whydark rules check [DIR ...]   check a rule base, every fault at once
  whydark rules compare OLD NEW   say what changed between two rule bases
  whydark rules sources           list what the rule base rests on
  whydark reckon [TOPIC]          do one sum alone: subnet, reach and others
  whydark read FILE               what is understood of a pasted text
  whydark here                    read this computer, and say what to do next
  whydark article [NAME]          read about a cause, or how something is done

  --record FILE   keep the call in this file         --json       results as JSON
  --site          for the installer on site          --unmasked   leave serials and addresses legible
  --rules DIR     use the rule base in this folder   --version, --help

Exit status: 0 done; 1 a check or comparison failed; 2 wrong use or a broken input file;
3 the machine (disk, permissions); 130 interrupted, nothing lost.`,
  'cli.unknown-command': 'There is no command "{word}". "whydark --help" lists them all.',
  'cli.unknown-command-near':
    'There is no command "{word}". Did you mean "{nearest}"? "whydark --help" lists them all.',
  'cli.unknown-option': 'There is no option "{word}". "whydark --help" lists them all.',
  'cli.unknown-option-near':
    'There is no option "{word}". Did you mean "{nearest}"? "whydark --help" lists them all.',
  'cli.option-wants': 'The option "{option}" needs a name after it. "whydark --help" shows which.',
  'cli.option-alone': 'The option "{option}" stands alone, without a value.',
  'cli.file-wanted': 'The command "{command}" needs a file: whydark {command} FILE.',
  'cli.too-many': 'The command "{command}" takes nothing more than that: "{extra}" is left over.',
  'cli.no-terminal':
    'A call needs a terminal to talk through, and this is none. Without one, use: whydark diagnose FILE.',
  'cli.at': '{file} {pointer}: {says}',
  'cli.at-file': '{file}: {says}',
  'cli.grade.error': '{fault}',
  'cli.grade.warning': '{fault} (A warning.)',
  'cli.unwritten':
    'The results could not be written where they were sent. The computer gives the reason as {reason}. Make room there, or send them elsewhere.',
  'cli.rules-broken':
    'The rule base in {folder} cannot be used. {count} fault(s), each on its own line above.',
  'cli.rules-fine':
    'Rule base {version} is fine: {causes} causes, {questions} questions, {findings} findings, {remedies} remedies, {others} other records. Digest {digest}.',
  'cli.rules-faults': '{errors} error(s), {warnings} warning(s).',
  'cli.calls': '"{text}" is no number of calls. Write a whole number from 1 to {most}.',
  'cli.compare-wants':
    'Two rule bases are wanted: whydark rules compare OLD NEW. Each is a folder, or a rules.json that the build packed.',
  'cli.change-added': '{name}: added',
  'cli.change-removed': '{name}: removed',
  'cli.change-rewired': 'another condition or shape: {fields}',
  'cli.change-reweighed': 'another weight: {fields}',
  'cli.change-reworded': 'other words: {fields}',
  'cli.changes': '{count} record(s) differ.',
  'cli.version-enough': 'Version {older} to {newer} says enough: {needed} is needed.',
  'cli.version-too-small': 'Version {older} to {newer} says too little: {needed} is needed.',
  'cli.record-same': '{file}: unchanged. {now}',
  'cli.record-moved': '{file}: moved.\n  was {was}\n  now {now}',
  'cli.record-step': 'Before event {at} it was {was}, and is {now} now.',
  'cli.record-standing': '{verdict} {cause} {percent} %',
  'cli.source': '{title}, {section} ({standing})',
  'cli.source-opened': 'opened and found to say it',
  'cli.source-restated': 'found quoted or restated elsewhere',
  'cli.source-from-memory': 'from memory',
  'cli.sources-count':
    '{published} published place(s); {practice} records rest on common practice, no source; {judged} are judged.',
  'cli.other-rules':
    '{file} was made with rule base {theirs} (digest {theirDigest}); this is {ours} (digest {ourDigest}). Give the other one with --rules DIR.',
  'cli.under-other-rules':
    '{file} was made with rule base {theirs} (digest {theirDigest}); it is played under {ours} (digest {ourDigest}). The other one: --rules DIR. Both side by side: whydark rules compare.',
  'cli.step-moved': '(this rule base would have put another step first)',
  'cli.steps-moved': 'This rule base puts another step first at {moved} of {all} entries.',
  'cli.torn':
    'Line {line} of {file} was cut off while it was being written; it is left out. Everything before it is there.',
  'cli.strangers':
    '{count} line(s) of {file} are of a kind that a newer version wrote. They are kept and left out here.',
  'cli.misfit': '{file} does not fit the rule base: {problem}',
  'cli.greeting':
    'whydark {version}, rule base {rules}. Read the words out as they stand. Every answer is kept as it is given.',
  'cli.greeting-privacy': 'Never ask for a password. The owner types it on their own device.',
  'cli.record-at': 'This call is kept in {file}',
  'cli.unfinished': 'Unfinished calls',
  'cli.unfinished-say': 'There are calls that were not closed. Go on with one?',
  'cli.unfinished-one': 'Go on with the call of {opened}, {events} entries',
  'cli.unfinished-new': 'Begin a new call',
  'cli.unreadable': 'Left aside: {problem}',
  'cli.resumed': 'Going on where the call stopped. {events} entries are there.',
  'cli.interrupted': 'Interrupted. Nothing is lost. Go on with: whydark call --record {file}',
  'cli.left-open': 'The call stays open. Go on with: whydark call --record {file}',
  'cli.disk': '{problem} Nothing answered before is lost; the last answer was not kept.',
  'cli.say': 'Say',
  'cli.sum': 'Sum',
  'cli.find': 'How',
  'cli.why': 'Why now',
  'cli.caution': 'Caution',
  'cli.path': 'Path',
  'cli.path-good': '+ {stage}',
  'cli.path-faulty': 'x {stage}',
  'cli.path-suspect': '? {stage}',
  'cli.path-unseen': '. {stage}',
  'cli.path-legend': '+ works   x faulty   ? suspect   . not looked at',
  'cli.answered': '= {answer}',
  'cli.several': 'Digits tick and untick, Enter is done.',
  'cli.esc': 'Enter: answer · Esc: commands',
  'cli.was': '(Tab takes {answer})',
  'cli.how-none': 'There is nothing to read on this here.',
  'cli.command.cant-tell': "can't tell",
  'cli.command.back': 'back',
  'cli.command.change': 'change',
  'cli.command.note': 'note',
  'cli.command.paste': 'paste',
  'cli.command.here': 'read this computer',
  'cli.command.why': 'why',
  'cli.command.how': 'how-to',
  'cli.command.other': 'other step',
  'cli.command.view': 'view path',
  'cli.command.stop': 'stop',
  'cli.change.heading': 'Which answer?',
  'cli.change.one': '{title}: {answer}',
  'cli.change.none': 'Leave all as they are',
  'cli.note.say': 'Type the note. It goes into the ticket as it stands.',
  'cli.stop.heading': 'Stop here?',
  'cli.stop.ticket': 'Close the call and write the ticket as it stands',
  'cli.stop.later': 'Leave it open, go on another time',
  'cli.stop.back': 'No, go on',
  'cli.ranking': 'As it stands',
  'cli.ranking-line': '{probability}  {title}',
  'cli.ranking-reason': '{decibans} db  {title}: {shows}',
  'cli.ranking-note': 'db: weight of evidence. 10 db make the odds ten times higher, -10 db ten times lower.',
  'cli.ticket-follows': 'The ticket follows. Paste it into the service desk.',
  'cli.verdict': '{says}',
  'cli.confidence': '{word}, {probability}',
  'cli.confidence.almost-certain': 'almost certain',
  'cli.confidence.very-likely': 'very likely',
  'cli.confidence.likely': 'likely',
  'cli.confidence.possible': 'possible',
  'cli.confidence.not-enough': 'not enough to tell',
  'cli.defect': '{grade}: {says}',
  'cli.defect.proven': 'proven',
  'cli.defect.follows': 'follows from the numbers given',
  'cli.next': 'Next: {step}',
  'cli.planned': 'Planned {number}: {title} ({who}; {where}; {minutes} min)',
  'cli.question': '{id}\n  {prompt}\n  {answers}',
  'cli.question-number': 'a number from {min} to {max} {unit}',
  'cli.question-yes-no': 'yes, no',
  'cli.question-address': 'an IPv4 address',
  'cli.question-mask': 'a subnet mask',
  'cli.question-moment': 'a date and time',
  'cli.question-text': 'words',
  'cli.replayed': '{number}. {step}',
} as const;
