import type { Sentence } from '../../messages/say.js';
import type { Scalar } from '../condition.js';
import type { Draft } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { pointer } from '../pointer.js';
import { shown } from '../shown.js';
import { conditionsOf, type PlacedTest, testsOf } from './conditions-of.js';
import { mustExist, unknownName } from './exists.js';
import { FITTING, type Operand, operandOf } from './operand.js';

/** Every comparison names something there is, by an operator that fits it, with a value it can take. */
export function checkConditions(draft: Draft, known: Known): readonly RuleFault[] {
  const names = new Set([...known.ids.questions, ...known.ids.facts, ...known.ids.findings]);
  return conditionsOf(draft)
    .flatMap(testsOf)
    .flatMap((placed) => [
      ...mustExist(placed.file, `${placed.pointer}/fact`, placed.test.fact, names, 'rules.no-such-fact'),
      ...checkTest(placed, operandOf(placed.test.fact, known)),
    ]);
}

function checkTest(
  { file, pointer: at, test }: PlacedTest,
  operand: Operand | undefined,
): readonly RuleFault[] {
  if (operand === undefined) return [];
  const fact = test.fact;
  if (operand.type === 'not-comparable')
    return [error(file, `${at}/fact`, { id: 'rules.not-comparable', with: { fact } })];
  const fitting = FITTING[operand.type];
  if (!fitting.includes(test.operator)) {
    const filling = { operator: test.operator, fact, fitting: fitting.join(', ') };
    return [error(file, `${at}/operator`, { id: 'rules.operator-misfit', with: filling })];
  }
  const value = test.value;
  const compared: readonly (readonly [string, Scalar])[] =
    typeof value === 'object'
      ? value.map((each, i) => [at + pointer('value', i), each])
      : [[`${at}/value`, value]];
  return compared.flatMap(([place, each]) => {
    const says = misfit(fact, operand, each);
    return says === undefined ? [] : [error(file, place, says)];
  });
}

function misfit(fact: string, operand: Operand, value: Scalar): Sentence | undefined {
  const found = shown(value);
  switch (operand.type) {
    case 'yes-no':
      return typeof value === 'boolean'
        ? undefined
        : { id: 'rules.write-true-or-false', with: { found, fact } };
    case 'number': {
      if (typeof value !== 'number') return { id: 'rules.write-number', with: { found, fact } };
      const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = operand;
      return value >= min && value <= max
        ? undefined
        : { id: 'rules.outside-range', with: { found, fact, min, max } };
    }
    case 'choice':
    case 'several':
      return typeof value === 'string' && operand.values.includes(value)
        ? undefined
        : unknownName(String(value), operand.values, 'rules.no-such-value');
    default:
      return typeof value === 'string' ? undefined : { id: 'rules.write-text', with: { found, fact } };
  }
}
