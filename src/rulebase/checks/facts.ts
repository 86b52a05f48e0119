import type { Draft } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { cyclesIn } from '../layers.js';
import { pointer } from '../pointer.js';
import type { FactRecord } from '../records.js';
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
      ...checkTopic(file, record, known),
    ]),
    ...cycles.map((cycle) => {
      const file = facts.find(({ record }) => record.id === cycle[0])?.file ?? '';
      return error(file, '/inputs', { id: 'rules.facts-cycle', with: { cycle: cycle.join(' -> ') } });
    }),
  ];
}

/** A topic is given its inputs by name, from questions only: a sum over ranges has to see what nobody could tell. */
function checkTopic(file: string, record: FactRecord, known: Known): readonly RuleFault[] {
  const inputs = known.code.topics.get(record.sum);
  if (inputs === undefined)
    return record.as ? [error(file, '/as', { id: 'rules.no-topic', with: { sum: record.sum } })] : [];
  const named = record.as ?? {};
  return [
    ...record.inputs
      .filter((id) => named[id] === undefined)
      .map((id) => error(file, '/as', { id: 'rules.input-unnamed', with: { input: id, sum: record.sum } })),
    ...Object.keys(record.given ?? {}).flatMap((input) =>
      mustExist(file, pointer('given', input), input, inputs, 'rules.no-such-topic-input'),
    ),
    ...Object.entries(named).flatMap(([question, input]) => [
      ...mustExist(file, pointer('as', question), question, known.ids.questions, 'rules.no-such-question'),
      ...mustExist(file, pointer('as', question), input, inputs, 'rules.no-such-topic-input'),
      ...(record.inputs.includes(question)
        ? []
        : [error(file, pointer('as', question), { id: 'rules.not-an-input', with: { question } })]),
    ]),
  ];
}
