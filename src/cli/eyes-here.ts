import { commandsOn } from '../here/commands.js';
import { discover } from '../here/discovery/discover.js';
import { thisMachine } from '../here/machine.js';
import { thisProber } from '../here/prober.js';
import type { Eyes } from './look-here.js';

/** This computer as it is. */
export function eyesHere(): Eyes {
  const machine = thisMachine();
  return {
    commands: commandsOn(process.platform),
    machine,
    prober: thisProber(machine),
    search: discover,
  };
}
