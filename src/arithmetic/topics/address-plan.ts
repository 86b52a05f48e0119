import { say } from '../../messages/say.js';
import { type Address, parseAddress, showAddress } from '../../values/address.js';
import { parseMask, showMask } from '../../values/mask.js';
import { ok, problem, type Result } from '../../values/result.js';
import { quoted, tidy } from '../../values/tidy.js';
import { type AddressPlan, addressPlan } from '../plan/address-plan.js';
import { csvOf } from '../plan/csv.js';
import type { Stretch } from '../plan/room.js';
import { parseAddresses } from './parse-addresses.js';
import { needed, optional, orUnknown, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** A plan of addresses for new cameras, with a table to paste and as CSV. */
export const ADDRESS_PLAN: Topic = {
  id: 'address-plan',
  title: 'plan.title',
  inputs: [
    { id: 'router-address', ask: 'reckon.ask-router-address' },
    { id: 'router-mask', ask: 'reckon.ask-router-mask' },
    { id: 'cameras', ask: 'plan.ask-cameras' },
    { id: 'dhcp-first', ask: 'reckon.ask-dhcp-first', optional: true },
    { id: 'dhcp-last', ask: 'reckon.ask-dhcp-last', optional: true },
    { id: 'known', ask: 'reckon.ask-known', optional: true },
    { id: 'shared-address', ask: 'plan.ask-shared', optional: true },
  ],
  reckon,
};

/** More than this nobody hangs up in a day; a list that long is a slip. */
const MOST = 200;

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
    sharedAddress: read.value['shared-address'],
  });
  const rows = value.cameras.map(({ camera, address }) => [
    ...[camera, showAddress(address), showMask(mask)],
    ...[showAddress(router), showAddress(router)],
  ]);
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
      csv: csvOf([['camera', 'address', 'mask', 'gateway', 'first dns'], ...rows]),
    },
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

/** A number of cameras, or their names with commas. */
function parseCameras(text: string): Result<readonly string[]> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const wrong = problem<readonly string[]>({
    id: 'plan.cameras-wrong',
    with: { text: quoted(text), most: MOST },
  });
  if (/^\d+$/.test(tidied.value)) {
    const count = Number(tidied.value);
    if (count < 1 || count > MOST) return wrong;
    return ok(Array.from({ length: count }, (_, at) => say('plan.camera', { number: at + 1 })));
  }
  const names = tidied.value
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  return names.length === 0 || names.length > MOST ? wrong : ok(names);
}
