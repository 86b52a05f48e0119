import { parseAddress, showAddress } from '../../values/address.js';
import { parseMask, showMask } from '../../values/mask.js';
import { ok } from '../../values/result.js';
import { temporaryAddress } from '../proposals/temporary-address.js';
import { parseAddresses } from './parse-addresses.js';
import { needed, optional, orUnknown, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** An address for a computer, to reach a camera whose range it is not in. */
export const TEMPORARY_ADDRESS: Topic = {
  id: 'temporary-address',
  title: 'reckon.temporary-address',
  inputs: [
    { id: 'camera-address', ask: 'reckon.ask-camera-address' },
    { id: 'camera-mask', ask: 'reckon.ask-camera-mask', optional: true },
    { id: 'avoid', ask: 'reckon.ask-avoid', optional: true },
  ],
  reckon,
};

const READS = {
  'camera-address': needed(parseAddress),
  'camera-mask': optional(orUnknown(parseMask), undefined),
  avoid: optional(parseAddresses, []),
};

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, READS);
  if (!read.ok) return read;
  const { 'camera-address': camera, 'camera-mask': mask, avoid } = read.value;
  const { value, lines, cautions, setUp, putBack } = temporaryAddress(camera, mask, avoid);
  return ok({
    lines: [...lines, ...cautions, ...setUp, ...putBack],
    data: value ? { address: showAddress(value.address), mask: showMask(value.mask) } : { address: null },
  });
}
