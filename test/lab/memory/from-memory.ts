import type { LoadedRules } from '../../../src/files/load-rules.js';
import type { Looks, Watch } from '../run/hold.js';
import { holdUntilBack } from '../run/hold-on.js';
import type { Row } from '../run/table.js';
import { noisy } from '../technician/noise.js';
import { type Remembered, seenAt } from './remembered.js';

export interface FromMemory {
  readonly withNoise: boolean;
  readonly held: ReadonlySet<string>;
  readonly watch?: Watch | undefined;
}

/**
 * A call over each of these broken sites as it was written down: no namespaces, no packets, some seconds for all. What
 * changes after something was tried in vain is not remembered; of two things wrong, the one that is left is.
 */
export async function runFromMemory(
  loaded: LoadedRules,
  remembered: Remembered,
  ids: readonly string[],
  { withNoise, held, watch }: FromMemory,
): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const isNoisy of withNoise ? [false, true] : [false]) {
    for (const id of ids) {
      watch?.(`\n${id}${isNoisy ? ' (with mistakes)' : ''}`);
      const call = await fromMemory(loaded, remembered, id, isNoisy, watch);
      const isPair = id.includes('+');
      rows.push({ fault: id, title: id, noisy: isNoisy, isPair, isHeldBack: held.has(id), call, seconds: 0 });
    }
  }
  return rows;
}

function fromMemory(
  loaded: LoadedRules,
  remembered: Remembered,
  id: string,
  isNoisy: boolean,
  watch?: Watch,
): ReturnType<typeof holdUntilBack> {
  const site = remembered.sites[id];
  if (!site) throw new Error(`nothing is written down of ${id}: npm run lab:remember -- ${id}`);
  const left = new Map(id.split('+').map((name, at) => [name, site.parts[at] ?? []]));
  let asked = 0;
  const looks: Looks = async (question) => {
    asked += 1;
    const answer = seenAt(remembered, [...left.keys()].join('+'), question.id) ?? { kind: 'cant-tell' };
    const seen = { ran: [], answer };
    return isNoisy ? noisy(seen, question, `${id}:${question.id}:${asked}`) : seen;
  };
  const parts = [...left].map(([name, mends]) => ({
    story: { everWorked: true, changed: 'not-known', when: 'days' } as const,
    mends,
    mend: async () => {
      left.delete(name);
    },
  }));
  return holdUntilBack(
    loaded,
    { causes: site.causes, parts, back: async () => left.size === 0 },
    looks,
    watch,
  );
}
