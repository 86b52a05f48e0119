import { type Address, isBlank } from '../../values/address.js';
import { chooseRoute } from './route.js';
import { type Device, type Site, segmentOf } from './site.js';

/** One answer to "who has this address?"; by proxy: a router that answers for a device elsewhere. */
export interface ArpAnswer {
  readonly device: string;
  readonly byProxy: boolean;
}

/**
 * Who answers when a device asks for an address on a segment (RFC 826): whoever has it there, whatever
 * its mask, and nobody on another segment. Two answers mean that the address is in use twice (RFC 5227).
 * Isolation mutes the other devices, not the routers. Nobody answers for 0.0.0.0.
 */
export function arpAnswers(
  site: Site,
  segment: string,
  asker: string,
  target: Address,
): readonly ArpAnswer[] {
  if (isBlank(target)) return [];
  const isIsolated = segmentOf(site, segment).isolated === true;
  const isHost = site.devices.find((device) => device.id === asker)?.kind === 'host';
  return site.devices
    .filter((device) => device.id !== asker && isOn(device, segment))
    .filter((device) => !(isIsolated && isHost && device.kind === 'host'))
    .flatMap((device): readonly ArpAnswer[] => {
      if (hasThere(device, segment, target)) return [{ device: device.id, byProxy: false }];
      return answersByProxy(device, segment, target) ? [{ device: device.id, byProxy: true }] : [];
    });
}

function isOn(device: Device, segment: string): boolean {
  return device.interfaces.some((one) => one.segment === segment);
}

function hasThere(device: Device, segment: string, target: Address): boolean {
  return device.interfaces.some((one) => one.segment === segment && one.address.bits === target.bits);
}

/** Only for what it would send out on another segment (RFC 1027, section 2.2). */
function answersByProxy(device: Device, segment: string, target: Address): boolean {
  if (device.kind !== 'router' || device.proxyArp !== true) return false;
  const choice = chooseRoute(device, target);
  return choice.kind === 'send' && choice.out.segment !== segment;
}
