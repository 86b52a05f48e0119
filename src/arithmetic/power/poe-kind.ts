import type { Volts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { MOST_PORT_VOLTS, poeClass } from './poe-classes.js';

/** Standard: asks for a 25 kohm signature before it gives power (IEEE 802.3). Passive: always on, no question asked. */
export type PoeKind = 'standard' | 'passive';

/** How what feeds the cable and what hangs on it go together. */
export type Pairing = PoeKind | 'mixed' | 'source-unsure' | 'camera-unsure' | 'volts-disagree';

/** Whether a voltage can come from a standard port: 44 to 57 V (IEEE 802.3). A passive supply may have those too. */
export function canBeStandard(source: Range<Volts>): boolean {
  return source.most >= poeClass(0).leastPortVolts && source.least <= MOST_PORT_VOLTS;
}

/**
 * What kind of source it is: what was said, else passive where the volts cannot be a standard port's. Volts
 * alone never prove a standard one.
 */
export function sourceKind(said: PoeKind | undefined, source: Range<Volts> | undefined): PoeKind | undefined {
  if (said !== undefined || source === undefined) return said;
  return canBeStandard(source) ? undefined : 'passive';
}

/** Which pair of kinds it is. Mixed kinds never power, and may do damage. */
export function pairing(
  said: PoeKind | undefined,
  camera: PoeKind | undefined,
  source: Range<Volts> | undefined,
): Pairing {
  if (said === 'standard' && source !== undefined && !canBeStandard(source)) return 'volts-disagree';
  const kind = sourceKind(said, source);
  if (kind === undefined) return 'source-unsure';
  if (camera !== undefined && camera !== kind) return 'mixed';
  return camera === undefined && kind === 'passive' ? 'camera-unsure' : kind;
}
