import { parseAddress, showAddress } from '../../values/address.js';
import { parseMask, showMask } from '../../values/mask.js';
import { ok } from '../../values/result.js';
import { freeAddress } from '../proposals/free-address.js';
import { parseAddresses } from './parse-addresses.js';
import { needed, optional, orUnknown, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** A free address for a camera that keeps its address, and the settings that go with it. */
export const FREE_ADDRESS: Topic = {
  id: 'free-address',
  title: 'reckon.free-address',
  inputs: [
    { id: 'router-address', ask: 'reckon.ask-router-address' },
    { id: 'router-mask', ask: 'reckon.ask-router-mask' },
    { id: 'dhcp-first', ask: 'reckon.ask-dhcp-first', optional: true },
    { id: 'dhcp-last', ask: 'reckon.ask-dhcp-last', optional: true },
    { id: 'known', ask: 'reckon.ask-known', optional: true },
  ],
  reckon,
};

const perhaps = optional(orUnknown(parseAddress), undefined);
const READS = {
  'router-address': needed(parseAddress),
  'router-mask': needed(parseMask),
  'dhcp-first': perhaps,
  'dhcp-last': perhaps,
  known: optional(parseAddresses, []),
};

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, READS);
  if (!read.ok) return read;
  const { 'router-address': router, 'router-mask': mask, known } = read.value;
  const { value, lines, checks } = freeAddress(
    router,
    mask,
    read.value['dhcp-first'],
    read.value['dhcp-last'],
    known,
  );
  return ok({
    lines: [...lines, ...checks],
    data: value
      ? {
          address: showAddress(value.address),
          mask: showMask(value.mask),
          gateway: showAddress(value.gateway),
          firstDns: showAddress(value.dns),
        }
      : { address: null },
  });
}
