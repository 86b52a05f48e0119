import type { Address } from '../../values/address.js';
import type { Address6 } from '../../values/address6.js';
import type { Mask } from '../../values/mask.js';
import type { Adapter, AdapterKind, At, Owner } from '../seen.js';

/** What is known so far of one device; filled line by line. */
export interface Group {
  name: string;
  owner: Owner;
  kind: AdapterKind;
  address?: At<Address> & { readonly mask?: Mask };
  mask?: At<Mask>;
  /** Addresses that no word names, behind the one that was taken for the address. */
  readonly others: At<Address>[];
  readonly addresses6: At<Address6>[];
  readonly gateways: At<Address>[];
  readonly gateways6: At<Address6>[];
  readonly dns: At<Address>[];
  readonly dns6: At<Address6>[];
  mac?: At<string>;
  isByHand?: At<boolean>;
  dhcpServer?: At<Address>;
  /** Whether a word names one of its values or says whose they are. */
  isNamed: boolean;
  isAddressNamed: boolean;
  /** Numbers of the lines that were understood; one can stand there twice. */
  readonly lines: number[];
}

export function newGroup(name: string, owner: Owner): Group {
  return {
    name,
    owner,
    kind: 'unknown',
    others: [],
    addresses6: [],
    gateways: [],
    gateways6: [],
    dns: [],
    dns6: [],
    isNamed: owner !== 'unknown',
    isAddressNamed: false,
    lines: [],
  };
}

export function isEmpty(group: Group): boolean {
  return (
    group.address === undefined &&
    group.mask === undefined &&
    group.mac === undefined &&
    group.isByHand === undefined &&
    group.dhcpServer === undefined &&
    [group.addresses6, group.gateways, group.gateways6, group.dns, group.dns6].every(
      (list) => list.length === 0,
    )
  );
}

/** The device as an adapter; nothing where too little tells that its numbers are those of a device. */
export function adapterOf(group: Group, hasLabels: boolean): Adapter | undefined {
  const mask = group.address?.mask ?? group.mask?.value;
  if (isEmpty(group) || !(group.isNamed || mask !== undefined)) return undefined;
  const guessed = hasLabels || mask === undefined ? undefined : gatewayAmong(group, mask);
  const unnamed: ('address' | 'gateway')[] = [];
  if (!group.isAddressNamed && group.others.length > 0) unnamed.push('address');
  if (guessed !== undefined) unnamed.push('gateway');
  const { address } = group;
  return {
    name: group.name,
    owner: group.owner,
    kind: group.kind,
    addresses:
      address === undefined
        ? []
        : [{ address: address.value, ...(mask === undefined ? {} : { mask }), line: address.line }],
    addresses6: group.addresses6,
    gateways: guessed === undefined ? group.gateways : [guessed],
    gateways6: group.gateways6,
    dns: group.dns,
    dns6: group.dns6,
    ...(group.mac === undefined ? {} : { mac: group.mac }),
    ...(group.isByHand === undefined ? {} : { isByHand: group.isByHand }),
    ...(group.dhcpServer === undefined ? {} : { dhcpServer: group.dhcpServer }),
    ...(unnamed.length === 0 ? {} : { unnamed }),
  };
}

/** Whether every address that no word names has found its place. */
export function isSettled(group: Group, adapter: Adapter): boolean {
  return group.others.length === (adapter.unnamed?.includes('gateway') === true ? 1 : 0);
}

/** Of the addresses that no word names the only one in the range that ends as gateways mostly do. */
function gatewayAmong(group: Group, mask: Mask): At<Address> | undefined {
  const own = group.address?.value;
  if (own === undefined || endsAsGateway(own)) return undefined;
  const found = group.others.filter(
    ({ value }) => endsAsGateway(value) && rangeOf(value, mask) === rangeOf(own, mask),
  );
  return found.length === 1 ? found[0] : undefined;
}

function endsAsGateway({ bits }: Address): boolean {
  return bits % 256 === 1 || bits % 256 === 254;
}

function rangeOf({ bits }: Address, { prefix }: Mask): number {
  return Math.floor(bits / 2 ** (32 - prefix));
}
