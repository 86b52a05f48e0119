import type { Adapter } from '../intake/seen.js';
import { say } from '../messages/say.js';
import { showAddress } from '../values/address.js';

/** What an adapter is called, in words; its address where it has no name. */
export function nameOf({ name, addresses, owner }: Adapter): string {
  if (name !== '') return `"${name.replaceAll('"', '')}"`;
  const address = addresses[0]?.address;
  return address === undefined
    ? say(`paste.owner-${owner}`)
    : say('paste.way-nameless', { address: showAddress(address) });
}
