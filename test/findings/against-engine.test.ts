import fc from 'fast-check';
import { Engine, type TopLevelCondition } from 'json-rules-engine';
import { describe, expect, test } from 'vitest';
import type { Fact } from '../../src/findings/fact.js';
import { holds } from '../../src/findings/holds.js';
import { fresh, type NamedRule, runEngine } from '../../src/findings/run-engine.js';
import type { Condition, Test } from '../../src/rulebase/condition.js';
import { mentions } from '../../src/rulebase/mentions.js';
import { facts } from './given.js';

const words = fc.constantFrom('red', 'blue', 'green', '');
const numbers = fc.integer({ min: -3, max: 3 });
const values = fc.record({
  yes: fc.boolean(),
  no: fc.boolean(),
  volts: numbers,
  watts: fc.double({ min: -3, max: 3, noNaN: true }),
  colour: words,
  kit: fc.uniqueArray(words),
});

const known = (fact: string, operator: fc.Arbitrary<Test['operator']>, value: fc.Arbitrary<Test['value']>) =>
  fc.record({ fact: fc.constant(fact), operator, value });
const some = (one: fc.Arbitrary<string | number>) => fc.uniqueArray(one, { minLength: 1, maxLength: 3 });

/** Tests as the checks at load let them through: each operator on facts of its kind. */
const testOf: fc.Arbitrary<Condition> = fc.oneof(
  ...['yes', 'no'].map((id) => known(id, fc.constantFrom('equal', 'notEqual'), fc.boolean())),
  ...['volts', 'watts'].flatMap((id) => [
    known(
      id,
      fc.constantFrom(
        'equal',
        'notEqual',
        'lessThan',
        'lessThanInclusive',
        'greaterThan',
        'greaterThanInclusive',
      ),
      numbers,
    ),
    known(id, fc.constantFrom('in', 'notIn'), some(numbers)),
  ]),
  known('colour', fc.constantFrom('equal', 'notEqual'), words),
  known('colour', fc.constantFrom('in', 'notIn'), some(words)),
  known('kit', fc.constantFrom('contains', 'doesNotContain'), words),
);

const { condition } = fc.letrec<{ condition: Condition; parts: Condition[] }>((tie) => ({
  condition: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    testOf,
    fc.record({ all: tie('parts') }),
    fc.record({ any: tie('parts') }),
    fc.record({ not: tie('condition') }),
  ),
  parts: fc.array(tie('condition'), { minLength: 1, maxLength: 3 }),
}));

/** The library itself, without anything of ours between. */
async function engineSays(root: Condition, given: Readonly<Record<string, Fact['value']>>): Promise<boolean> {
  const engine = new Engine();
  engine.addRule({
    conditions: structuredClone({ all: [root] }) as TopLevelCondition,
    event: { type: 'evidence' },
  });
  const { results } = await engine.run({ ...given });
  return results.length === 1;
}

const rule = (name: string, conditions: Condition): NamedRule => ({
  name,
  finding: name,
  rule: { value: 'yes', conditions },
});

describe('json-rules-engine', () => {
  test('and holds agree on every condition over known facts', async () => {
    await fc.assert(
      fc.asyncProperty(condition, values, async (root, given) => {
        expect(holds(root, facts(given))).toBe(await engineSays(root, given));
      }),
      { numRuns: 500 },
    );
  });

  test('run through the room fires the same rules, whatever stands at the root', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(condition, { minLength: 1, maxLength: 5 }), values, async (roots, given) => {
        const rules = roots.map((root, i) => rule(`r${i}`, root));
        const fired = await runEngine(rules, facts(given));
        const wanted = rules.filter((one) => holds(one.rule.conditions, facts(given)) === true);
        expect(fired.map(({ name }) => name)).toEqual(wanted.map(({ name }) => name));
      }),
      { numRuns: 100 },
    );
  });

  test('remembers what came of a rule and comes to the same as an engine of its own, in any order of facts', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(condition, { minLength: 1, maxLength: 4 }),
        fc.array(values, { minLength: 2, maxLength: 6 }),
        async (roots, givens) => {
          const rules = roots.map((root, i) => rule(`r${i}`, root));
          for (const given of [...givens, ...givens]) {
            const remembered = (await runEngine(rules, facts(given))).map(({ name }) => name);
            expect(remembered).toEqual([...(await fresh(rules, facts(given)))].sort());
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('comes to the same when other runs empty what is remembered meanwhile', async () => {
    const positive = rule('positive', { fact: 'volts', operator: 'greaterThan', value: 0 });
    await runEngine([positive], facts({ volts: 1 }));
    const others = Array.from({ length: 50 }, (_, i) =>
      rule(`other${i}`, { all: [{ any: [{ fact: 'volts', operator: 'lessThan', value: 0 }] }] }),
    );
    const [slow] = await Promise.all([
      runEngine([positive, ...others], facts({ volts: 1 })),
      ...Array.from({ length: 100 }, (_, i) => runEngine([positive], facts({ volts: -i }))),
    ]);
    expect(slow.map(({ name }) => name)).toEqual(['positive']);
  });

  test('never hears of a rule with a fact nobody knows, and no run is lost to one', async () => {
    await fc.assert(
      fc.asyncProperty(
        condition,
        values,
        fc.constantFrom('yes', 'volts', 'colour', 'kit'),
        async (root, given, gone) => {
          const { [gone]: _, ...left }: Record<string, Fact['value']> = given;
          const sound = rule('sound', { any: [{ fact: 'no', operator: 'in', value: [true, false] }] });
          const fired = await runEngine([rule('odd', root), sound], facts(left));
          const names = fired.map(({ name }) => name);
          expect(names).toContain('sound');
          if (mentions(root).includes(gone)) expect(names).not.toContain('odd');
        },
      ),
      { numRuns: 100 },
    );
  });

  // The library takes an unknown fact for "not" where undefined facts are allowed, and throws where not.
  test.each<[string, Condition]>([
    ['notEqual', { fact: 'gone', operator: 'notEqual', value: 'x' }],
    ['notIn', { fact: 'gone', operator: 'notIn', value: ['x'] }],
    ['not', { not: { fact: 'gone', operator: 'equal', value: 'x' } }],
    [
      'any with a known part',
      {
        any: [
          { fact: 'yes', operator: 'equal', value: true },
          { not: { fact: 'gone', operator: 'equal', value: 'x' } },
        ],
      },
    ],
  ])('%s of an unknown fact does not fire', async (_, root) => {
    expect(await runEngine([rule('odd', root)], facts({ yes: true }))).toEqual([]);
  });

  test('leaves the rules as they were', async () => {
    const one = rule('r', { not: { fact: 'yes', operator: 'equal', value: true } });
    const before = structuredClone(one);
    await runEngine([Object.freeze(one)], facts({ yes: false }));
    expect(one).toEqual(before);
  });
});
