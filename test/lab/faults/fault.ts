import type { Fault, Injected, Lab, Story } from '../types.js';

/** The service takes a camera for offline when it has heard nothing for so long (ms). */
const FORGETS_AFTER = 3800;

/** Whose view it takes away. `computer`: the camera's own page as opened from the computer on site. */
export type Breaks = 'wifi' | 'mobile' | 'both' | 'guest' | 'computer' | 'nothing';

/**
 * `real`: packets are lost for just the reason named. `variant`: the same packets are lost by other means, for the
 * reason cannot be built here (a lead, a radio). `told`: the difference to its neighbours stands in `plain` alone.
 */
export type Realism = 'real' | 'variant' | 'told';

export interface SiteFault extends Fault {
  readonly breaks: Breaks;
  readonly realism: Realism;
}

/** Undoes what was done, as the remedy would. */
export type Undo = () => Promise<void>;

export interface FaultDraft {
  readonly id: string;
  readonly causes: readonly string[];
  readonly title: string;
  readonly breaks: Breaks;
  readonly realism: Realism;
  readonly story: Story;
  readonly mends: readonly string[];
  readonly plain?: Readonly<Record<string, string | boolean>>;
  /** It takes a while until all of it shows: the camera may still get through once after it was made. */
  readonly isSlow?: boolean;
  readonly make: (lab: Lab) => Promise<Undo>;
}

/** A fault of its parts. What was made is undone once, by mend() or by the lab's restore(), whichever is first. */
export function fault({ story, mends, plain, isSlow = false, make, ...head }: FaultDraft): SiteFault {
  return {
    ...head,
    inject: async (lab): Promise<Injected> => {
      const undo = once(await make(lab));
      lab.defer(undo);
      await settle(lab, isSlow);
      return {
        story,
        mends,
        ...(plain ? { plain } : {}),
        mend: async () => {
          await undo();
          await askAnew(lab);
          await settle(lab);
        },
      };
    },
  };
}

/** Runs it at the first call, and nothing at the later ones. */
export function once(undo: Undo): Undo {
  let done: Promise<void> | undefined;
  return () => {
    done ??= undo();
    return done;
  };
}

/** The minutes that go by on a real site: old flows and neighbours are forgotten, and the camera has tried anew. */
export async function settle(lab: Lab, isSlow = false): Promise<void> {
  const started = performance.now();
  const natting = ['router', 'box', 'provider', 'carrier'] as const;
  const talking = ['camera', 'computer', 'phone', 'twin', 'router'] as const;
  await Promise.all([
    ...natting.map((host) => lab.run(host, ['conntrack', '-F'])),
    ...talking.map((host) => lab.run(host, ['ip', 'neigh', 'flush', 'all'])),
  ]);
  const isOnline = await lab.cameraFresh();
  if (isSlow || !isOnline) await pause(Math.max(0, FORGETS_AFTER - (performance.now() - started)));
}

/** Who had to give himself an address (RFC 3927) goes on asking for one; a device on site has it within a minute. */
async function askAnew(lab: Lab): Promise<void> {
  for (const host of ['phone', 'computer'] as const) {
    const { stdout } = await lab.run(host, ['ip', '-4', '-o', 'addr']);
    if (stdout.includes('inet 169.254.')) await lab.dhcp(host);
  }
}

const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));
