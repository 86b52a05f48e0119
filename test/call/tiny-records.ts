import type { Test } from '../../src/rulebase/condition.js';
import type { Cause, Finding, Question, Remedy, Sign } from '../../src/rulebase/records.js';

/** Short ways to write records of a rule base for tests. */
export const equal = (fact: string, value: Test['value']): Test => ({ fact, operator: 'equal', value });

type Optional<T, K extends keyof T> = Omit<T, K> & Partial<Pick<T, K>>;

export function question(
  given: Optional<Question, 'title' | 'source' | 'prompt' | 'help' | 'minutes' | 'who'>,
): Question {
  return {
    title: `Title of ${given.id}`,
    source: 'judged',
    prompt: `Say ${given.id}?`,
    help: `How to find ${given.id}.`,
    minutes: 1,
    who: 'anyone',
    ...given,
  };
}

export function choices(
  ...ids: readonly string[]
): Extract<Question['answer'], { type: 'choice' | 'several' }> {
  return { type: 'choice', choices: ids.map((id) => ({ id, title: `it is ${id}` })) };
}

/** A finding that reads one choice or yes-no question, value by value. */
export function reading(
  id: string,
  asks: string,
  values: Readonly<Record<string, readonly [answer: string | boolean, usual: number]>>,
  more: Partial<Finding> = {},
): Finding {
  return {
    id,
    title: `Title of ${id}`,
    source: 'judged',
    stage: 'power',
    values: Object.fromEntries(
      Object.entries(values).map(([value, [, usual]]) => [value, { title: `seen ${value}`, usual }]),
    ),
    asks: [asks],
    rules: Object.entries(values).map(([value, [answer]]) => ({
      value,
      conditions: { all: [equal(asks, answer)] },
    })),
    ...more,
  };
}

export function cause(
  id: string,
  stage: string,
  prior: number,
  signs: Readonly<Record<string, Sign>>,
): Cause {
  return {
    id,
    title: `Title of ${id}`,
    source: 'judged',
    stage,
    prior,
    verdict: `Verdict of ${id}.`,
    signs,
    alsoExplainedBy: [],
  };
}

export function remedy(
  id: string,
  mends: Readonly<Record<string, string>>,
  changes: readonly string[],
  more: Partial<Remedy> = {},
): Remedy {
  return {
    id,
    title: `Title of ${id}`,
    source: 'judged',
    stage: 'power',
    steps: [`Do ${id}.`],
    place: 'site',
    minutes: 3,
    who: 'anyone',
    mends: Object.entries(mends).map(([one, chance]) => ({ cause: one, chance })),
    changes,
    check: `Did ${id} take?`,
    undo: `Undo ${id}.`,
    leaves: `${id} is done.`,
    ...more,
  };
}
