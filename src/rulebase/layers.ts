import { mentions } from './mentions.js';
import type { Finding, FindingId } from './records.js';

/** For each id, the ids it is built on. */
export type Dependencies = ReadonlyMap<string, readonly string[]>;

/**
 * Ids in layers: each rests only on layers before its own, and stands in the first layer where that holds; sorted
 * inside a layer. Ids on a cycle, or resting on one, are in no layer (topological sorting, Kahn 1962).
 */
export function layersIn(dependencies: Dependencies): readonly (readonly string[])[] {
  const layers: string[][] = [];
  const left = new Map(dependencies);
  while (left.size > 0) {
    const free = [...left].filter(([, on]) => !on.some((id) => left.has(id))).map(([id]) => id);
    if (free.length === 0) break;
    layers.push(free.sort());
    for (const id of free) left.delete(id);
  }
  return layers;
}

/** Every cycle that has to be broken, each as the ids in order and the first one again; none share an id. */
export function cyclesIn(dependencies: Dependencies): readonly (readonly string[])[] {
  const cycles: string[][] = [];
  let left = new Map(dependencies);
  for (;;) {
    const layered = new Set(layersIn(left).flat());
    left = new Map([...left].filter(([id]) => !layered.has(id)));
    const first = [...left.keys()].sort()[0];
    if (first === undefined) return cycles;
    const walk = [first];
    for (;;) {
      const here = walk.at(-1) ?? first;
      const next = [...(left.get(here) ?? [])].filter((id) => left.has(id)).sort()[0] ?? here;
      const seen = walk.indexOf(next);
      walk.push(next);
      if (seen < 0) continue;
      const cycle = walk.slice(seen);
      cycles.push(cycle);
      for (const id of cycle) left.delete(id);
      break;
    }
  }
}

/** For each finding, the other findings its rules mention. */
export function findingDependencies(findings: readonly Finding[]): Dependencies {
  const ids = new Set(findings.map(({ id }) => id));
  return new Map(
    findings.map(({ id, rules }) => [
      id,
      [...new Set(rules.flatMap((rule) => mentions(rule.conditions)))].filter((fact) => ids.has(fact)),
    ]),
  );
}

const LAYERS = new WeakMap<readonly Finding[], readonly (readonly FindingId[])[]>();

/**
 * The order in which findings can be settled: those of one layer need only findings of layers before it.
 * Throws on a cycle, which a checked rule base does not have.
 */
export function layersOf(findings: readonly Finding[]): readonly (readonly FindingId[])[] {
  const known = LAYERS.get(findings) ?? layered(findings);
  LAYERS.set(findings, known);
  return known;
}

function layered(findings: readonly Finding[]): readonly (readonly FindingId[])[] {
  const dependencies = findingDependencies(findings);
  const cycle = cyclesIn(dependencies)[0];
  if (cycle !== undefined) throw new Error(`findings rest on each other: ${cycle.join(' -> ')}`);
  return layersIn(dependencies);
}
