import type { Sentence } from '../messages/say.js';
import { quoted } from './tidy.js';

const MAC = /^(?:[0-9a-f]{2}([:-])(?:[0-9a-f]{2}\1){4}[0-9a-f]{2}|(?:[0-9a-f]{4}\.){2}[0-9a-f]{4})$/i;
const IPV6 = /^\[?[0-9a-f:.]*(?:::|(?::[0-9a-f.]+){3})[^ ]*$/i;
const WEB_ADDRESS = /:\/\//;
const WITH_PORT = /^(\d+(?:[.,]\d+){3}):\d+$/;
const PREFIX_ALONE = /^\/ ?\d+$/;

/** Says what else tidied text is, where an IPv4 address is needed. */
export function notIpv4(text: string): Sentence | undefined {
  const said = { text: quoted(text) };
  if (WEB_ADDRESS.test(text)) return { id: 'typed.web-address', with: said };
  if (MAC.test(text)) return { id: 'typed.mac', with: said };
  if (IPV6.test(text)) return { id: 'typed.ipv6', with: said };
  if (PREFIX_ALONE.test(text)) return { id: 'typed.mask-as-address', with: said };
  const address = WITH_PORT.exec(text)?.[1];
  if (address === undefined) return undefined;
  return { id: 'typed.address-with-port', with: { ...said, address: quoted(address) } };
}
