import { type Address, isBlank } from '../../values/address.js';
import { sameSubnet } from '../subnet.js';
import { type Device, type Interface, owns } from './site.js';

/** What a device does with a packet for an address. `ask` is the address it then asks for by ARP. */
export type Choice =
  | { readonly kind: 'here' }
  | {
      readonly kind: 'send';
      readonly out: Interface;
      readonly ask: Address;
      readonly because: 'neighbour' | 'own-gateway' | 'route' | 'gateway';
    }
  | { readonly kind: 'none'; readonly why: 'no-address' | 'no-gateway' | 'gateway-outside' };

interface Way {
  readonly prefix: number;
  readonly choice: Choice;
}

/**
 * The way a device takes: by its own addresses and masks and its routes the longest prefix that fits
 * (RFC 1122, section 3.3.1.1; RFC 1812, section 5.2.4.3), else its default gateway, which must be a
 * neighbour. A gateway that is the device's own address makes every address a neighbour, and so does a route by one
 * with what it leads to (seen on Linux).
 */
export function chooseRoute(device: Device, destination: Address): Choice {
  if (owns(device, destination)) return { kind: 'here' };
  const usable = device.interfaces.filter((one) => !isBlank(one.address));
  const [first] = usable;
  if (first === undefined) return { kind: 'none', why: 'no-address' };
  const best = [...connected(usable, destination), ...routed(device, usable, destination)].reduce<
    Way | undefined
  >((longest, way) => (longest === undefined || way.prefix > longest.prefix ? way : longest), undefined);
  return best?.choice ?? byDefault(device, usable, first, destination);
}

function connected(interfaces: readonly Interface[], destination: Address): readonly Way[] {
  return interfaces
    .filter((out) => sameSubnet(out.address, out.mask, destination))
    .map((out) => ({
      prefix: out.mask.prefix,
      choice: { kind: 'send', out, ask: destination, because: 'neighbour' },
    }));
}

function routed({ routes = [] }: Device, interfaces: readonly Interface[], destination: Address) {
  return routes
    .filter((route) => sameSubnet(route.address, route.mask, destination))
    .flatMap(({ mask, via }): readonly Way[] => {
      const own = ownAt(interfaces, via);
      const out = own ?? neighbourOf(interfaces, via);
      if (out === undefined) return [];
      const ask = own === undefined ? via : destination;
      return [{ prefix: mask.prefix, choice: { kind: 'send', out, ask, because: 'route' } }];
    });
}

function byDefault(
  device: Device,
  interfaces: readonly Interface[],
  first: Interface,
  destination: Address,
): Choice {
  const { gateway } = device;
  if (gateway === undefined || isBlank(gateway)) return { kind: 'none', why: 'no-gateway' };
  const own = ownAt(interfaces, gateway);
  if (own !== undefined) return { kind: 'send', out: own, ask: destination, because: 'own-gateway' };
  const out = neighbourOf(interfaces, gateway);
  if (out !== undefined) return { kind: 'send', out, ask: gateway, because: 'gateway' };
  if (device.takesOutsideGateway === true)
    return { kind: 'send', out: first, ask: gateway, because: 'gateway' };
  return { kind: 'none', why: 'gateway-outside' };
}

/**
 * The interface towards a neighbour: on the segment of the longest prefix that holds it, the first whose range does,
 * for that is the address it is asked from (seen on Linux).
 */
function neighbourOf(interfaces: readonly Interface[], address: Address): Interface | undefined {
  const near = interfaces.filter((one) => sameSubnet(one.address, one.mask, address));
  const longest = near.reduce<Interface | undefined>(
    (best, one) => (best === undefined || one.mask.prefix > best.mask.prefix ? one : best),
    undefined,
  );
  return near.find(({ segment }) => segment === longest?.segment);
}

/**
 * The interface that has this address; where it has several of one range, the first of them, for that is the address
 * it sends from (seen on Linux).
 */
function ownAt(interfaces: readonly Interface[], address: Address): Interface | undefined {
  const own = interfaces.find((one) => one.address.bits === address.bits);
  return (
    own &&
    interfaces.find(
      ({ segment, mask, address: first }) =>
        segment === own.segment && mask.prefix === own.mask.prefix && sameSubnet(first, mask, own.address),
    )
  );
}
