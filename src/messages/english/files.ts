/** What is said when a file or a folder cannot be used. Paths, line numbers and field names are filled in. */
export const FILES_WORDS = {
  'files.missing': 'There is no file or folder {path}. Check the name, and the folder it stands in.',
  'files.forbidden':
    'This computer does not let you use {path}. Ask whoever looks after it for the right to read and write there.',
  'files.read-only':
    'The disk that holds {path} can only be read, not written. Choose a folder on another disk.',
  'files.full':
    'The disk that holds {path} is full. Make room on it, then do the last thing again. What was written before is safe.',
  'files.quota':
    'Your share of the disk that holds {path} is used up. Delete what you no longer need, then do the last thing again. What was written before is safe.',
  'files.too-many-open':
    'This computer has too many files open to open {path}. Close some programs, then try again.',
  'files.is-folder': '{path} is a folder, and a file is needed. Name a file inside it.',
  'files.not-folder': 'In {path} a file stands where a folder is needed. Check the path.',
  'files.exists': '{path} is there already, and is never written over. Choose another name.',
  'files.links-loop': 'The links on the way to {path} lead in a circle. Remove the wrong link.',
  'files.name-too-long': 'The name {path} is too long for this disk. Choose a shorter one.',
  'files.other':
    '{path} could not be used. The computer gives the reason as {code}. Try again, and if it stays so, ask whoever looks after the computer.',
  'files.not-a-file': '{path} is not an ordinary file. Name an ordinary file.',
  'files.too-large': '{path} is larger than {limit}. Check that it is the right file.',
  'files.not-text': '{path} does not hold text. Save it as plain text in UTF-8, or paste the text instead.',
  'files.standard-input': 'the text on standard input',
  'files.mebibytes': '{count} MiB',

  'files.no-home':
    'No home folder is known for you, so there is nowhere to keep calls. Set XDG_STATE_HOME to a folder of yours.',

  'files.record-no-header':
    '{path} does not begin with the first line of a call record. It is cut off, or it is another kind of file.',
  'files.record-other-format':
    '{path} is a call record of format {found}. This program reads format {known}. Use the release of whydark that wrote it, or a newer one.',
  'files.header-needs':
    "Line 1 of {path}: the first line of a call record needs '{field}', and it is missing or wrong.",
  'files.line-broken':
    'Line {line} of {path} is not readable, and it is not the last one. The file was changed or damaged. Take an undamaged copy, or mend that line.',
  'files.event-not-object': 'Line {line} of {path} is not an event of a call.',
  'files.event-needs-type': "Line {line} of {path}: an event needs 'type', a text.",
  'files.event-needs-time':
    "Line {line} of {path}: '{type}' needs 'at', a time in UTC such as 2026-11-25T08:30:00Z.",
  'files.event-needs-text': "Line {line} of {path}: '{type}' needs '{field}', a text.",
  'files.event-optional-text':
    "Line {line} of {path}: '{field}' of '{type}' has to be a text, or be left out.",
  'files.event-needs-one-of': "Line {line} of {path}: '{type}' needs '{field}', one of: {choices}.",
  'files.event-needs-pasted':
    "Line {line} of {path}: '{type}' needs '{field}', a list of answers, each with question, answer and line.",
  'files.event-needs-answer':
    "Line {line} of {path}: '{type}' needs '{field}': a text, a number, true, false, a list of texts, or null for can't tell.",
  'files.event-unknown':
    "Line {line} of {path} holds an event of the kind '{type}', which this release of whydark does not know. If a newer release wrote it, use that one.",

  'files.record-busy':
    'The call in {path} is open in another window (process {pid} on {host}). Go on there, or stop it there first.',
  'files.record-busy-elsewhere':
    'The call in {path} is marked as open by process {pid} on {host}. If it is not open there, delete {lock}, then try again.',
  'files.record-lock-stuck':
    'The marker {lock} says that the call in {path} is open, and it could not be cleared. If no other window has that call open, delete the marker, then try again.',
  'files.record-changed':
    'Something else changed {path} while this call was open, so nothing more was written to it. Stop, then open the call again.',

  'files.rules-no-head':
    'There is no file {head} in {path}. A folder of additions begins with it, such as {"version": "desk.1", "replaces": []}.',
  'files.rules-no-manifest':
    'The folder {path} holds no manifest.json, so it is not a rule base. Name the folder that holds manifest.json.',
  'files.rules-folder-twice':
    'The link {path} leads to a folder of the rule base that was read already. Remove the link.',
  'files.rules-no-schemas': 'The folder {path} holds no *.schema.json file. Name the folder of the schemas.',
  'files.rules-damaged':
    'The rule base that was installed with whydark ({path}) is damaged or missing. Install whydark again.',
} as const;
