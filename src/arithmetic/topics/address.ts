import { type Address, parseAddress, showAddress } from '../../values/address.js';
import { type Address6, parseAddress6, showAddress6 } from '../../values/address6.js';
import { ok, type Result } from '../../values/result.js';
import { addressKind } from '../address-kind.js';
import { address6Kind } from '../address6-kind.js';
import { needed, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** What an address is for, IPv4 or IPv6. */
export const ADDRESS: Topic = {
  id: 'address',
  title: 'reckon.address',
  inputs: [{ id: 'address', ask: 'reckon.ask-either-address' }],
  reckon,
};

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, { address: needed(parseEither) });
  if (!read.ok) return read;
  const { address } = read.value;
  if (address.kind === 'ipv4') {
    const { value, lines } = addressKind(address);
    return ok({ lines, data: { address: showAddress(address), version: 4, kind: value } });
  }
  const { value, lines, embedded } = address6Kind(address);
  const inside = embedded && { embedded: showAddress(embedded) };
  return ok({ lines, data: { address: showAddress6(address), version: 6, kind: value, ...inside } });
}

/** Two colons or more make an IPv6 address; one stands before a port. */
function parseEither(text: string): Result<Address | Address6> {
  return /:.*:/.test(text) ? parseAddress6(text) : parseAddress(text);
}
