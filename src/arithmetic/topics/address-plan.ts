import { type Address, parseAddress, showAddress } from '../../values/address.js';
import { parseMask, showMask } from '../../values/mask.js';
import { ok } from '../../values/result.js';
import { type AddressPlan, addressPlan } from '../plan/address-plan.js';
import { parseCameras } from '../plan/camera-names.js';
import { csvOf } from '../plan/csv.js';
import type { Stretch } from '../plan/room.js';
import { parseAddresses } from './parse-addresses.js';
import { needed, optional, orUnknown, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** A plan of addresses for new cameras, with a table to paste and as CSV. */
export const ADDRESS_PLAN: Topic = {
  id: 'address-plan',
  title: 'plan.title',
  hasTable: true,
  inputs: [
    { id: 'router-address', ask: 'reckon.ask-router-address' },
    { id: 'router-mask', ask: 'reckon.ask-router-mask' },
    { id: 'cameras', ask: 'plan.ask-cameras' },
    { id: 'dhcp-first', ask: 'reckon.ask-dhcp-first', optional: true },
    { id: 'dhcp-last', ask: 'reckon.ask-dhcp-last', optional: true },
    { id: 'known', ask: 'reckon.ask-known', optional: true },
    { id: 'shared-address', ask: 'plan.ask-default', optional: true },
  ],
  reckon,
};

const perhaps = optional(orUnknown(parseAddress), undefined);
const READS = {
  'router-address': needed(parseAddress),
  'router-mask': needed(parseMask),
  cameras: needed(parseCameras),
  'dhcp-first': perhaps,
  'dhcp-last': perhaps,
  known: optional(parseAddresses, []),
  'shared-address': perhaps,
};

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, READS);
  if (!read.ok) return read;
  const { 'router-address': router, 'router-mask': mask, cameras, known } = read.value;
  const { value, lines } = addressPlan({
    ...{ router, mask, known, cameras },
    dhcp: stretch(read.value['dhcp-first'], read.value['dhcp-last']),
    defaultAddress: read.value['shared-address'],
  });
  const shared = [showMask(mask), showAddress(router), showAddress(router)];
  const rows = [
    ...value.cameras.map(({ camera, address }) => [camera, showAddress(address), ...shared]),
    ...value.without.map((camera) => [camera, '', ...shared]),
  ];
  return ok({
    verdict: verdictOf(value),
    lines,
    data: {
      cameras: value.cameras.map(({ camera, address }) => ({ camera, address: showAddress(address) })),
      without: value.without,
      mask: showMask(mask),
      gateway: showAddress(router),
      firstDns: showAddress(router),
      room: value.room,
      conflicts: value.conflicts,
    },
    csv: csvOf([['camera', 'address', 'mask', 'gateway', 'first dns'], ...rows]),
  });
}

function verdictOf({ cameras, without, conflicts }: AddressPlan): 'fine' | 'doubtful' | 'impossible' {
  if (cameras.length === 0) return 'impossible';
  return without.length > 0 || conflicts > 0 ? 'doubtful' : 'fine';
}

function stretch(one: Address | undefined, other: Address | undefined): Stretch | undefined {
  if (!one || !other) return undefined;
  return { from: Math.min(one.bits, other.bits), to: Math.max(one.bits, other.bits) };
}
