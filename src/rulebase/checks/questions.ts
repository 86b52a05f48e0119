import type { Draft, Placed } from '../draft.js';
import { error, type RuleFault, warning } from '../fault.js';
import { type Known, questionsBehind } from '../known.js';
import { mentions } from '../mentions.js';
import { pointer } from '../pointer.js';
import type { Question } from '../records.js';
import { checkChoices } from './choices.js';
import { conditionsOf } from './conditions-of.js';
import { mustExist } from './exists.js';
import { repeated } from './repeated.js';

/** Questions can be answered, stand in one order at the opening, and none is asked for nothing. */
export function checkQuestions(draft: Draft, known: Known): readonly RuleFault[] {
  const opening = draft.questions.filter(({ record }) => record.opening !== undefined);
  const twice = new Set(repeated(opening, ({ record }) => String(record.opening)));
  return [
    ...draft.questions.flatMap(checkAnswer),
    ...draft.questions.flatMap(checkWhen),
    ...draft.questions.flatMap((question) => checkReads(question, known)),
    ...draft.questions.flatMap((question) => checkChoices(question, known)),
    ...opening
      .filter((_, i) => twice.has(i))
      .map(({ file, record: { opening: number = 0 } }) =>
        error(file, '/opening', { id: 'rules.opening-twice', with: { opening: number } }),
      ),
    ...checkBearing(draft, known),
  ];
}

/** What a question reads from a pasted text can be an answer to it. An unknown name reads nothing, which is no harm. */
function checkReads(
  { file, record: { reads, answer } }: Placed<Question>,
  { code }: Known,
): readonly RuleFault[] {
  if (reads === undefined) return [];
  const shape = code.observations.get(reads);
  if (shape === undefined)
    return mustExist(
      file,
      '/reads',
      reads,
      new Set(code.observations.keys()),
      'rules.no-such-observation',
    ).map(({ says }) => warning(file, '/reads', says));
  const ids = 'choices' in answer ? answer.choices.map(({ id }) => id) : [];
  const fits = typeof shape === 'string' ? answer.type === shape : shape.every((word) => ids.includes(word));
  const needed = typeof shape === 'string' ? shape : shape.join(', ');
  return fits ? [] : [error(file, '/reads', { id: 'rules.observation-misfit', with: { reads, needed } })];
}

function checkAnswer({ file, record: { answer } }: Placed<Question>): readonly RuleFault[] {
  switch (answer.type) {
    case 'choice':
    case 'several':
      return [
        ...repeated(answer.choices, ({ id }) => id).map((i) => pointer('answer', 'choices', i, 'id')),
        ...repeated(answer.choices, ({ title }) => title).map((i) =>
          pointer('answer', 'choices', i, 'title'),
        ),
      ].map((at) => error(file, at, { id: 'rules.twice-in-list' }));
    case 'number':
      return answer.min < answer.max
        ? []
        : [
            error(file, '/answer/max', {
              id: 'rules.not-above',
              with: { found: answer.max, floor: answer.min },
            }),
          ];
    default:
      return [];
  }
}

/** A question that waits for its own answer is never asked. */
function checkWhen({ file, record }: Placed<Question>): readonly RuleFault[] {
  if (record.when === undefined || !mentions(record.when).includes(record.id)) return [];
  return [error(file, '/when', { id: 'rules.waits-for-itself' })];
}

function checkBearing(draft: Draft, known: Known): readonly RuleFault[] {
  // An unread file may be the one that uses the question.
  if (!known.whole) return [];
  const used = new Set([
    ...draft.findings.flatMap(({ record }) => record.asks),
    ...conditionsOf(draft).flatMap(({ condition }) =>
      mentions(condition).flatMap((id) => [...questionsBehind(id, known)]),
    ),
  ]);
  return draft.questions
    .filter(({ record }) => !used.has(record.id) && record.answer.type !== 'text' && !acts(record))
    .map(({ file }) => error(file, '', { id: 'rules.question-idle' }));
}

/** Whether an answer does something by itself: fills a part of the call, moves the person, or ends the call. */
function acts({ answer, part }: Question): boolean {
  if (part !== undefined) return true;
  return (
    'choices' in answer && answer.choices.some(({ place, ends }) => place !== undefined || ends !== undefined)
  );
}
