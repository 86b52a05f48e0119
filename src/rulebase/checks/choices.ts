import { nearest } from '../did-you-mean.js';
import type { Placed } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { pointer } from '../pointer.js';
import type { Choice, Question } from '../records.js';
import { shown } from '../shown.js';
import { listed, mustExist } from './exists.js';

/** Choices that move a person or end a call can do so, and those that name kit name kit there is. */
export function checkChoices({ file, record }: Placed<Question>, known: Known): readonly RuleFault[] {
  const { answer, part } = record;
  const choices = 'choices' in answer ? answer.choices : [];
  const several = answer.type === 'several';
  return [
    ...choices.flatMap(({ place, ends }, i) => {
      const at = pointer('answer', 'choices', i);
      // Several choices at once could name two places or two endings.
      if (several && (place !== undefined || ends !== undefined)) {
        return [error(file, at, { id: 'rules.choice-cannot-act' })];
      }
      return place === undefined
        ? []
        : mustExist(file, `${at}/place`, place, known.places, 'rules.no-such-place');
    }),
    ...(part === 'kit' && !several ? [error(file, '/part', { id: 'rules.kit-needs-several' })] : []),
    ...(part === 'kit' && several ? checkKit(file, choices, known) : []),
  ];
}

function checkKit(file: string, choices: readonly Choice[], known: Known): readonly RuleFault[] {
  const mistyped = choices.flatMap(({ id }, i) => {
    const near = known.kit.has(id) ? undefined : nearest(id, known.kit);
    if (near === undefined) return [];
    const says = { id: 'rules.unknown-name-near', with: { found: shown(id), near } } as const;
    return [error(file, pointer('answer', 'choices', i, 'id'), says)];
  });
  const missing = [...known.kit].filter((id) => !choices.some((choice) => choice.id === id));
  if (missing.length === 0 || mistyped.length > 0) return mistyped;
  return [error(file, '/answer/choices', { id: 'rules.kit-not-asked', with: { kit: listed(missing) } })];
}
