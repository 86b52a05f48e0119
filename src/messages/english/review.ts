/** What is said of a rule base whose records fit, but do not do their work. */
export const REVIEW_WORDS = {
  'review.confusable':
    'Nothing that can be asked tells this from "{other}": the best step, {finding}, gives {weight} decibans, and {least} are wanted. Add a question, merge the two, or declare one remedy for both under "sameRemedy".',
  'review.same-remedy-weak':
    '"{remedy}" does not cure this and "{other}" surely enough to be the one remedy for both: both need a chance of {least} at least.',
  'review.same-remedy-idle':
    'This and "{other}" are told apart by what can be asked, so nothing has to be declared. Take it out.',
  'review.same-remedy-many':
    '{count} pairs are declared to have the same remedy. {most} is the most; split or merge some.',
  'review.never-first':
    'Whatever is answered, this never comes first: "{other}" always leads. Give it signs of its own, or merge the two.',
  'review.same-information':
    'The answers to {question} set this and "{other}" alike, so they would count twice. Let one of them say "repeats".',
  'review.against-default':
    'This cause shows {finding} quite otherwise than its stage: {own}, not {usual}. Say why under "because".',
  'review.idle-because': 'Nothing here is at odds with the stage in {finding}. Take the reason out.',
  'review.source-unopened':
    'Nobody says that this source was opened and found to say it. Open it and say so under "opened", or write "from memory" in its section.',
  'review.long-prompt':
    'This takes more than one breath to say: {words} words, and {most} is the most. Shorten it, or ask for one thing only.',
  'review.never-asked':
    'This was worth asking in none of {calls} rehearsed calls. Take it out, or let it tell more.',
  'review.never-tried':
    'This was tried in none of {calls} rehearsed calls, nor in {own} with what it mends. Take it out, or say better when it makes sense and what it mends.',
  'additions.no-head':
    'This has to be one JSON object with a version of letters, digits and dots, and a list "replaces": {"version": "desk.1", "replaces": []}.',
  'additions.manifest':
    'Additions have no manifest of their own: the one of the rule base counts. Take this out.',
  'additions.there-already':
    'There is a record {name} in the rule base already. Give this one another id, or name {name} under "replaces" in additions.json.',
  'additions.nothing-to-replace':
    '{name} is to be replaced, but it is not in both the rule base and these additions. Write it as causes/cable-run, or take it out.',
} as const;
