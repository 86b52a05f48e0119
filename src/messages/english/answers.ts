/** What is said when an answer does not fit its question. */
export const ANSWER_WORDS = {
  'answer.empty': 'Nothing is written there. Write the words as they stand, or "can\'t tell".',
  'answer.text':
    'The answer to "{question}" has to be text. Write the words between quotes, or null for "can\'t tell".',
  'answer.yes-no':
    'The answer to "{question}" has to be yes or no. Write yes, no, or null for "can\'t tell".',
  'answer.choice':
    'The answer to "{question}" has to be one of these: {choices}. Write null for "can\'t tell".',
  'answer.unknown-question': 'There is no question "{question}" in this rule base.',
  'answer.unknown-question-near':
    'There is no question "{question}" in this rule base. Did you mean "{nearest}"?',
  'answers-file.shape':
    'An answers file is one JSON object with "answers" in it: {"answers": {"camera-lights": "off"}}.',
  'answers-file.unknown-key':
    'An answers file has "answers" and, if wanted, "role". Nothing else belongs here.',
  'answers-file.unknown-field':
    'Beside "answer" only "origin" may stand here. Take this out, or mend its name.',
  'answers-file.role': 'The role has to be "desk" (help desk on a call) or "site" (installer on site).',
  'answers-file.origin': 'The origin of "{question}" has to be one of these: {origins}.',
  'conflict.repeats':
    '"{here}: {value}" does not go with "{there}: {otherValue}". One of the two answers is not right.',
} as const;
