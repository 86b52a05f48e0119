import type { Draft } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import type { Stage } from '../manifest.js';
import { pointer } from '../pointer.js';
import type { StageDefault, StageId } from '../records.js';

/** The stages a default speaks for: those of its range, on its side of the fork if it names one. */
export function stagesOf(stages: readonly Stage[], { from, to, side }: StageDefault): readonly StageId[] {
  const ids = stages.map(({ id }) => id);
  return stages
    .slice(ids.indexOf(from), ids.indexOf(to) + 1)
    .filter((stage) => side === undefined || stage.side === side)
    .map(({ id }) => id);
}

/** Ranges run the way the picture does, hold a stage, and no stage gets two defaults of one finding. */
export function checkDefaults(draft: Draft, known: Known): readonly RuleFault[] {
  const stages = draft.manifest.record.stages;
  return draft.findings.flatMap(({ file, record }) => {
    const taken = new Map<StageId, number>();
    return (record.defaults ?? []).flatMap((one, i) => {
      const [from, to] = [known.stages.get(one.from), known.stages.get(one.to)];
      if (from === undefined || to === undefined) return [];
      const at = pointer('defaults', i);
      if (from > to)
        return [error(file, at, { id: 'rules.range-backwards', with: { from: one.from, to: one.to } })];
      const held = stagesOf(stages, one);
      if (held.length === 0) return [error(file, `${at}/side`, { id: 'rules.range-empty' })];
      const double = held.filter((stage) => taken.has(stage));
      for (const stage of held) if (!taken.has(stage)) taken.set(stage, i);
      const first = double[0] === undefined ? undefined : taken.get(double[0]);
      if (first === undefined) return [];
      const filling = { stages: double.join(', '), other: pointer('defaults', first) };
      return [error(file, at, { id: 'rules.defaults-overlap', with: filling })];
    });
  });
}
