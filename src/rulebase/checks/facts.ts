import type { Draft } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { cyclesIn } from '../layers.js';
import { pointer } from '../pointer.js';
import { mustExist } from './exists.js';

/** Facts name a sum the program has, and are worked out from questions and other facts, never from themselves. */
export function checkFacts({ facts }: Draft, known: Known): readonly RuleFault[] {
  const sums = new Set(known.code.sums);
  const names = new Set([...known.ids.questions, ...known.ids.facts]);
  const cycles = cyclesIn(new Map(facts.map(({ record }) => [record.id, record.inputs])));
  return [
    ...facts.flatMap(({ file, record }) => [
      ...mustExist(file, '/sum', record.sum, sums, 'rules.no-such-sum'),
      ...record.inputs.flatMap((input, i) =>
        mustExist(file, pointer('inputs', i), input, names, 'rules.no-such-input'),
      ),
    ]),
    ...cycles.map((cycle) => {
      const file = facts.find(({ record }) => record.id === cycle[0])?.file ?? '';
      return error(file, '/inputs', { id: 'rules.facts-cycle', with: { cycle: cycle.join(' -> ') } });
    }),
  ];
}
