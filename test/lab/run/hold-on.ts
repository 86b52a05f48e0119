import type { LoadedRules } from '../../../src/files/load-rules.js';
import { holdLabCall, type Looks, type Watch, type World } from './hold.js';
import type { LabCall } from './lab-call.js';

/**
 * A call, and one more on site where it ended in a visit that mended something and the picture is still not there:
 * whoever stands there then asks again, as the list that was sent along knew of one fault only.
 */
export async function holdUntilBack(
  loaded: LoadedRules,
  world: World,
  looks: Looks,
  watch: Watch = () => {},
): Promise<LabCall> {
  const left = new Set(world.parts);
  const parts = world.parts.map((part) => ({
    ...part,
    mend: async () => {
      await part.mend();
      left.delete(part);
    },
  }));
  const first = await holdLabCall(loaded, { ...world, parts }, looks, watch);
  if (first.isBack || !first.visitTried.some(({ mends }) => mends)) return first;
  watch('whoever was sent holds a call on site');
  return joined(first, await holdLabCall(loaded, { ...world, parts: [...left] }, looks, watch));
}

/** Both as one: what was tried on site comes after the visit's list, and the questions and minutes add up. */
export function joined(first: LabCall, second: LabCall): LabCall {
  return {
    ...first,
    isBack: second.isBack,
    finalRank: second.finalRank,
    wrong: first.wrong + second.wrong,
    questions: first.questions + second.questions,
    minutes: Math.round((first.minutes + second.minutes) * 10) / 10,
    visits: first.visits + second.visits,
    visitTried: [
      ...first.visitTried,
      ...second.tried.map(({ remedy, mends }) => ({ remedy, mends })),
      ...second.visitTried,
    ],
    gatesBroken: [...first.gatesBroken, ...second.gatesBroken],
  };
}
