/** What is said of a rule base that cannot be used as it stands. Every sentence says what to write instead. */
export const RULES_WORDS = {
  'rules.misplaced-file':
    'No record belongs here. Put it in the folder of its kind: questions, findings, causes or remedies with the stage as a folder below, or facts, contradictions, cautions, tester-faults or retired.',
  'rules.not-json':
    'This is not JSON any more at line {line}, column {column}: {found} cannot stand there. Look for a missing comma, quote or bracket just before it.',
  'rules.text-ends':
    'The file ends too early, at line {line}, column {column}. Look for a missing quote or closing bracket.',
  'rules.name-twice':
    'The field {name} stands twice in one object, again at line {line}, column {column}. Take one of the two out.',
  'rules.too-deep':
    'This is nested too deeply at line {line}, column {column}. Write it with fewer brackets.',
  'rules.unknown-field':
    'The field {field} does not belong here. Take it out. These may stand here: {known}.',
  'rules.unknown-field-near': 'The field {field} does not belong here. Did you mean "{near}"?',
  'rules.path-forbidden':
    'A test may not have a path. Leave it out, and name a fact that has the value itself.',
  'rules.missing-field': 'The field "{field}" is missing. Add it.',
  'rules.not-a-condition':
    'This is no condition. Write one of all, any or not, or a test with fact, operator and value.',
  'rules.mixed-condition':
    'A condition has only one of all, any or not, and no test beside it. Put each part into its own condition.',
  'rules.bare-test':
    'The outermost condition of a rule must be all, any or not. Put the test into "all": [ ].',
  'rules.not-here': 'This field does not go with the type given above. Take it out, or change the type.',
  'rules.twice-in-list': 'This stands twice in the list. Take one of the two out.',
  'rules.not-one-of': '{found} is not known here. Write one of {known}.',
  'rules.not-one-of-near': '{found} is not known here. Did you mean "{near}"? Write one of {known}.',
  'rules.wrong-schema': '{found} is not the schema of this kind of record. Write the path to {schema}.',
  'rules.wrong-form': '{found} cannot stand here. Write {form}.',
  'rules.wrong-type': '{found} cannot stand here. Write a value of this JSON type: {wanted}.',
  'rules.too-few': 'Too little stands here. Write at least {least}.',
  'rules.too-small': '{found} is too small. Write {least} or more.',
  'rules.not-above': '{found} is too small. Write more than {floor}.',
  'rules.too-large': '{found} is too large. Write {most} or less.',
  'rules.no-manifest':
    'The file manifest.json is missing. Add it: it says which stages, words and places there are.',
  'rules.id-not-file':
    'The id {id} and the name of its file differ. Rename the file to {right}, or put the id right.',
  'rules.stage-not-folder':
    'The file stands in the folder {folder}, but the record names another stage. Move the file to {right}, or put the stage right.',
  'rules.id-twice': 'This id is taken by {other}. Choose another id, and name the file after it.',
  'rules.id-shared':
    'This id is taken by {other}. Questions, facts and findings share their ids, since conditions name them alike. Choose another id.',
  'rules.title-twice': 'This title is taken by {other}. Write a title that tells the two apart.',
  'rules.id-retired': 'This id was used before and is retired in {other}. Choose an id that was never used.',
  'rules.reserved-id': 'The id {id} is reserved for the program. Choose another id.',
  'rules.unknown-name-near': '{found} is not known here. Did you mean "{near}"?',
  'rules.no-such-stage': 'There is no stage {found}. Write one of {known}.',
  'rules.no-such-place': 'There is no place {found}. Write one of {known}.',
  'rules.no-such-kit': 'There is no kit {found}. Write one of {known}, or add it to the manifest.',
  'rules.no-such-word': 'There is no frequency word {found}. Write one of {known}.',
  'rules.no-such-caution': 'There is no caution {found}. Add it under cautions, or name one that is there.',
  'rules.no-such-finding': 'There is no finding {found}. Add it under findings, or name one that is there.',
  'rules.no-such-question':
    'There is no question {found}. Add it under questions, or name one that is there.',
  'rules.no-such-cause': 'There is no cause {found}. Add it under causes, or name one that is there.',
  'rules.no-such-fact': 'There is no question, fact or finding {found}. Add it, or name one that is there.',
  'rules.no-such-input': 'There is no question or fact {found}. Add it, or name one that is there.',
  'rules.no-such-value': 'There is no value {found}. Write one of {known}.',
  'rules.no-such-observation': 'There is nothing to read by the name {found}. Write one of these: {known}.',
  'rules.observation-misfit':
    '"{reads}" comes out as {needed}. The answer to this question has to be able to be that.',
  'rules.no-such-sum': 'The program has no sum {found}. Write one of {known}.',
  'rules.no-such-replacement': 'There is no record {id} under {kind}. Add it, or leave replacedBy out.',
  'rules.not-comparable':
    'The answer to {fact} is typed freely and cannot be compared. Compare a fact that is worked out from it.',
  'rules.operator-misfit': '{operator} does not fit {fact}. Write one of {fitting}.',
  'rules.write-true-or-false': '{found} cannot be an answer to {fact}. Write true or false, without quotes.',
  'rules.write-number': '{found} cannot be compared with {fact}. Write a number, without quotes.',
  'rules.write-text': '{found} cannot be compared with {fact}. Write a text in quotes.',
  'rules.outside-range': '{found} is outside the range of {fact}. Write a number from {min} to {max}.',
  'rules.signs-over-one':
    'These words add up to {sum}, which is over 1. Write rarer words, or leave values out.',
  'rules.signs-under-one':
    'All values are listed, but their words add up to {sum}. Write words that add up to 1, or leave out a value to take the rest.',
  'rules.nothing-to-share':
    'A share of {left} is left for {values}, but their usual share is 0. List one of them, or give it a usual share.',
  'rules.usual-not-one': 'The usual shares add up to {sum}. Write shares that add up to 1.',
  'rules.range-backwards': 'The range runs from {from} back to {to}. Swap the two: the power comes first.',
  'rules.range-empty':
    'No stage of this range is on this side of the fork. Widen the range, or leave the side out.',
  'rules.defaults-overlap':
    'A default for {stages} stands at {other} already. Shorten one of the two ranges, or name its side.',
  'rules.value-never-set': 'No rule sets the value {value}. Add a rule, or take the value out.',
  'rules.not-asked': 'The rule uses {fact}, which needs the answer to {missing}. Add that to asks.',
  'rules.asked-for-nothing':
    'No rule of this finding uses {question}. Use it in a rule, or take it out of asks.',
  'rules.repeats-a-repeat':
    '{other} cannot be repeated: it is this finding itself, or repeats another one. Name the finding that comes first.',
  'rules.findings-cycle': 'These findings rest on each other: {cycle}. Break the ring in one of their rules.',
  'rules.facts-cycle':
    'These facts are worked out from each other: {cycle}. Break the ring in one of their inputs.',
  'rules.way-missing': 'The way from {from} to {to} is missing. Add it with its minutes.',
  'rules.way-of-within':
    'What is done at {place} is done at one of the places it lies within, so nobody walks there. Take this way out.',
  'rules.way-to-itself': 'This way leads from {place} to itself. Take it out.',
  'rules.opening-twice':
    'Another question has the opening number {opening}. Give each question its own number.',
  'rules.waits-for-itself':
    'The question waits for its own answer, so it is never asked. Name another question or fact.',
  'rules.question-idle':
    'Nothing depends on this question. Name it in the asks of a finding or in a condition, or take it out.',
  'rules.kit-needs-several':
    'A question for the kit at hand needs the answer type "several". Change the type, or take part out.',
  'rules.kit-not-asked':
    'The kit {kit} is in the manifest, but cannot be answered here. Add a choice for it, or take it out of the manifest.',
  'rules.choice-cannot-act':
    'Only the choices of the type "choice" can name a place or end a call. Change the type, or take that out.',
  'rules.cause-unmended': 'No remedy mends this cause. Add a remedy, or name the cause in the mends of one.',
  'rules.explains-itself': 'A cause cannot be its own alternative. Take it out of the list.',
  'rules.check-not-between': 'The answer to check first must be one of those in between: {known}.',
  'rules.no-such-sum-fact': 'There is no fact {found} whose sum could be shown. Write one of facts/.',
  'rules.no-topic': '"as" belongs to a topic of sums, and {sum} is a plain one. Leave "as" out.',
  'rules.input-unnamed':
    'The input {input} has no name in {sum}. Say in "as" which input of the topic it gives.',
  'rules.no-such-topic-input': 'The topic has no input {found}. "whydark reckon" lists its inputs.',
  'rules.not-an-input': '{question} is named here, but it is not among the inputs. Add it there.',
} as const;
