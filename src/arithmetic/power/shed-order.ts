import type { Watts } from '../../values/units/physical.js';
import type { PortUse, Priority } from './port-list.js';

const KEPT: readonly Priority[] = ['critical', 'high', 'low'];

/**
 * The ports in the order in which a switch that goes by priority lets them go: low before high before critical, and
 * of those alike the highest number first. As the manuals of managed switches give it; a switch may be set otherwise.
 */
export function shedOrder(uses: readonly PortUse[]): readonly PortUse[] {
  return [...uses].sort((a, b) => KEPT.indexOf(b.priority) - KEPT.indexOf(a.priority) || b.port - a.port);
}

/** The ports that such a switch lets go before the others fit its budget, first one first. */
export function shedUntilFits(
  uses: readonly PortUse[],
  budget: Watts,
  wattsOf: (use: PortUse) => number,
): readonly PortUse[] {
  const order = shedOrder(uses);
  let used = order.reduce((sum, use) => sum + wattsOf(use), 0);
  const shed: PortUse[] = [];
  for (const use of order) {
    if (used <= budget) return shed;
    used -= wattsOf(use);
    shed.push(use);
  }
  return shed;
}
