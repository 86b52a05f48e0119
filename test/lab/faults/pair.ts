import type { Injected, Lab, Story } from '../types.js';
import type { Breaks, SiteFault } from './fault.js';

/** Two things wrong at once: each is mended by itself. */
export interface PairInjected extends Injected {
  readonly parts: readonly Injected[];
}

/** Each thing that is wrong by itself. */
export function partsOf(injected: Injected): readonly Injected[] {
  return 'parts' in injected ? (injected as PairInjected).parts : [injected];
}

export interface SitePair extends SiteFault {
  /** Both, in the order in which they came about. */
  readonly of: readonly [SiteFault, SiteFault];
  inject(lab: Lab): Promise<PairInjected>;
}

/** Two faults on one site. People tell one story of it: `story`. */
export function pairOf(one: SiteFault, other: SiteFault, story: Story): SitePair {
  return {
    id: `${one.id}+${other.id}`,
    causes: [...one.causes, ...other.causes],
    title: `${one.title}. And: ${other.title}`,
    breaks: joined(one.breaks, other.breaks),
    realism: one.realism === 'real' ? other.realism : one.realism,
    of: [one, other],
    inject: async (lab) => {
      const parts = [await one.inject(lab), await other.inject(lab)] as const;
      return {
        story,
        mends: parts.flatMap(({ mends }) => mends),
        plain: { ...parts[0].plain, ...parts[1].plain },
        parts,
        mend: async () => {
          for (const part of parts) await part.mend();
        },
      };
    },
  };
}

function joined(one: Breaks, other: Breaks): Breaks {
  return one === other ? one : 'both';
}
