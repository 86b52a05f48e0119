import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cyclesIn,
  type Dependencies,
  findingDependencies,
  layersIn,
  layersOf,
} from '../../src/rulebase/layers.js';
import type { Finding } from '../../src/rulebase/records.js';
import { SMALL } from './small-rule-base.js';

const ids = ['a', 'b', 'c', 'd', 'e', 'f'];
/** Any graph over six ids, rings and self-references included. */
const graph: fc.Arbitrary<Dependencies> = fc
  .array(fc.subarray(ids), { minLength: ids.length, maxLength: ids.length })
  .map((rows) => new Map(ids.map((id, i) => [id, rows[i] ?? []])));

function finding(id: string, on: readonly string[]): Finding {
  const all = on.map((fact) => ({ fact, operator: 'equal' as const, value: 'x' }));
  return {
    id,
    title: id,
    source: 'judged',
    stage: 's',
    values: {},
    asks: [],
    rules: [{ value: 'x', conditions: { all } }],
  };
}

describe('layers of findings', () => {
  it('puts findings on answers first, and those that build on them after', () => {
    expect(layersOf(SMALL.findings)).toEqual([['address-fits', 'sign-of-life'], ['phone-side']]);
  });

  it('looks at findings only, not at questions and facts', () => {
    expect(findingDependencies(SMALL.findings).get('phone-side')).toEqual(['sign-of-life']);
  });

  it('throws on a ring and names it', () => {
    const ring = [finding('one', ['two']), finding('two', ['three']), finding('three', ['one'])];
    expect(() => layersOf(ring)).toThrow('one -> two -> three -> one');
  });

  it('names the same ring whatever the order', () => {
    const knot = [finding('a', ['c', 'b']), finding('c', ['a']), finding('b', ['a'])];
    expect(cyclesIn(findingDependencies(knot))).toEqual([['a', 'b', 'a']]);
    expect(cyclesIn(findingDependencies([...knot].reverse()))).toEqual([['a', 'b', 'a']]);
  });

  it('does not depend on the order of the findings', () => {
    const chain = [finding('c', ['b']), finding('b', ['a']), finding('a', ['q'])];
    expect(layersOf(chain)).toEqual([['a'], ['b'], ['c']]);
    expect(layersOf([...chain].reverse())).toEqual([['a'], ['b'], ['c']]);
  });

  it('puts every id after all it rests on, and not later than needed', () => {
    fc.assert(
      fc.property(graph, (dependencies) => {
        const layers = layersIn(dependencies);
        const layerOf = new Map(layers.flatMap((layer, i) => layer.map((id) => [id, i] as const)));
        for (const [id, layer] of layerOf) {
          const below = (dependencies.get(id) ?? []).map((on) => layerOf.get(on) ?? Number.NaN);
          expect(layer).toBe(Math.max(-1, ...below) + 1);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('finds a ring exactly where not all ids can be layered, and each is a ring', () => {
    fc.assert(
      fc.property(graph, (dependencies) => {
        const rings = cyclesIn(dependencies);
        expect(rings.length > 0).toBe(layersIn(dependencies).flat().length < ids.length);
        for (const ring of rings) {
          expect(ring.at(-1)).toBe(ring[0]);
          for (const [i, id] of ring.slice(1).entries())
            expect(dependencies.get(ring[i] ?? '')).toContain(id);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('leaves no ring once one link of each ring it names is cut, again and again', () => {
    fc.assert(
      fc.property(graph, (dependencies) => {
        let left = dependencies;
        for (let rings = cyclesIn(left); rings.length > 0; rings = cyclesIn(left)) {
          const cuts = new Map(rings.map((ring) => [ring[0], ring[1]]));
          left = new Map([...left].map(([id, on]) => [id, on.filter((each) => cuts.get(id) !== each)]));
        }
        expect(layersIn(left).flat()).toHaveLength(ids.length);
      }),
      { numRuns: 200 },
    );
  });
});
