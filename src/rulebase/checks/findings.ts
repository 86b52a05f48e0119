import type { Draft, Placed } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import { type Known, questionsBehind } from '../known.js';
import { cyclesIn, findingDependencies } from '../layers.js';
import { mentions } from '../mentions.js';
import { pointer } from '../pointer.js';
import type { Finding } from '../records.js';
import { testsOf } from './conditions-of.js';
import { mustExist } from './exists.js';

/** Rules can set every value of a finding, from what it asks, and findings do not rest on themselves. */
export function checkFindings(draft: Draft, known: Known): readonly RuleFault[] {
  return [
    ...draft.findings.flatMap((placed) => [
      ...checkRules(placed),
      ...checkReach(placed, known),
      ...checkAsks(placed, known),
      ...checkRepeats(placed, known),
    ]),
    ...checkCycles(draft),
  ];
}

function checkRules({ file, record }: Placed<Finding>): readonly RuleFault[] {
  const values = new Set(Object.keys(record.values));
  const set = new Set(record.rules.map(({ value }) => value));
  return [
    ...record.rules.flatMap(({ value }, i) =>
      mustExist(file, pointer('rules', i, 'value'), value, values, 'rules.no-such-value'),
    ),
    ...[...values]
      .filter((value) => !set.has(value))
      .map((value) =>
        error(file, pointer('values', value), { id: 'rules.value-never-set', with: { value } }),
      ),
  ];
}

/** A rule may use the questions asked, facts worked out from them alone, and other findings. */
function checkReach({ file, record }: Placed<Finding>, known: Known): readonly RuleFault[] {
  const asked = new Set(record.asks);
  return record.rules.flatMap(({ conditions }, i) =>
    testsOf({ file, pointer: pointer('rules', i, 'conditions'), condition: conditions }).flatMap((placed) => {
      const missing = [...questionsBehind(placed.test.fact, known)].filter((id) => !asked.has(id));
      if (missing.length === 0) return [];
      const filling = { fact: placed.test.fact, missing: missing.join(', ') };
      return [error(file, `${placed.pointer}/fact`, { id: 'rules.not-asked', with: filling })];
    }),
  );
}

/** A question that is asked for a finding is used by one of its rules. */
function checkAsks({ file, record }: Placed<Finding>, known: Known): readonly RuleFault[] {
  const used = new Set(
    record.rules
      .flatMap((rule) => mentions(rule.conditions))
      .flatMap((id) => [...questionsBehind(id, known)]),
  );
  return record.asks.flatMap((id, i) =>
    used.has(id) || !known.questions.has(id) || !known.whole
      ? []
      : [error(file, pointer('asks', i), { id: 'rules.asked-for-nothing', with: { question: id } })],
  );
}

function checkRepeats({ file, record }: Placed<Finding>, known: Known): readonly RuleFault[] {
  const repeats = record.repeats;
  if (repeats === undefined) return [];
  const other = known.findings.get(repeats.finding);
  if (other === undefined) return [];
  if (other.repeats !== undefined || other.id === record.id) {
    return [error(file, '/repeats/finding', { id: 'rules.repeats-a-repeat', with: { other: other.id } })];
  }
  const [own, others] = [new Set(Object.keys(record.values)), new Set(Object.keys(other.values))];
  return Object.entries(repeats.agrees).flatMap(([value, agreeing]) => [
    ...mustExist(file, pointer('repeats', 'agrees', value), value, own, 'rules.no-such-value'),
    ...agreeing.flatMap((each, i) =>
      mustExist(file, pointer('repeats', 'agrees', value, i), each, others, 'rules.no-such-value'),
    ),
  ]);
}

function checkCycles({ findings }: Draft): readonly RuleFault[] {
  return cyclesIn(findingDependencies(findings.map(({ record }) => record))).map((cycle) => {
    const file = findings.find(({ record }) => record.id === cycle[0])?.file ?? '';
    return error(file, '/rules', { id: 'rules.findings-cycle', with: { cycle: cycle.join(' -> ') } });
  });
}
