import type { Condition, Test } from '../condition.js';
import type { Draft } from '../draft.js';
import { pointer } from '../pointer.js';

/** A condition with the place it stands at. */
export interface PlacedCondition {
  readonly file: string;
  readonly pointer: string;
  readonly condition: Condition;
}

/** A single comparison with the place it stands at. */
export interface PlacedTest {
  readonly file: string;
  readonly pointer: string;
  readonly test: Test;
}

/** Every condition of a rule base, whatever it is for. */
export function conditionsOf(draft: Draft): readonly PlacedCondition[] {
  const { questions, findings, remedies, contradictions } = draft;
  const withWhen = [...questions, ...remedies, ...contradictions, ...draft['tester-faults']];
  return [
    ...withWhen.flatMap(({ file, record: { when } }) =>
      when === undefined ? [] : [{ file, pointer: '/when', condition: when }],
    ),
    ...findings.flatMap(({ file, record }) =>
      record.rules.map(({ conditions }, i) => ({
        file,
        pointer: pointer('rules', i, 'conditions'),
        condition: conditions,
      })),
    ),
    ...remedies.flatMap(({ file, record: { gate } }) =>
      gate === undefined ? [] : [{ file, pointer: '/gate/condition', condition: gate.condition }],
    ),
  ];
}

/** The comparisons a condition is made of. */
export function testsOf({ file, pointer: at, condition }: PlacedCondition): readonly PlacedTest[] {
  const inside = (parts: readonly Condition[], name: string) =>
    parts.flatMap((part, i) => testsOf({ file, pointer: at + pointer(name, i), condition: part }));
  if ('all' in condition) return inside(condition.all, 'all');
  if ('any' in condition) return inside(condition.any, 'any');
  if ('not' in condition) return testsOf({ file, pointer: at + pointer('not'), condition: condition.not });
  return [{ file, pointer: at, test: condition }];
}
