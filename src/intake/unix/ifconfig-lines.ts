import { type AdapterDraft, addAddress } from './adapter-draft.js';
import { readMedia } from './media.js';
import type { Step } from './walk.js';
import { after, macOf, sides, wordsOf } from './words.js';

/** `inet addr:172.23.40.57  Bcast:172.23.40.255  Mask:255.255.255.0`; the labels are translated. */
const OLD_INET =
  /^\s{0,20}inet ?[^\d:]{1,20}: ?(\d{1,3}(?:\.\d{1,3}){3})(?:\s.{0,120}?:(\d{1,3}(?:\.\d{1,3}){3}))?$/;
const OLD_INET6 = /inet6 ?[^:]{0,20}: ?([0-9a-f:.]{2,45})\/\d{1,3}/i;
const OLD_FLAGS = /^\s{0,20}((?:[A-Z]{2,20} ){0,12})\s?MTU:\d/;
const MAC_LABELS = new Set(['ether', 'lladdr', 'address:', 'hwaddr']);
const COUNTS =
  /^(?:RX|TX|collisions|Interrupt|options|ec_|nd6|groups|index|priority|llprio|loop|unspec|member)/;
const MORE =
  /^(?:Base|Memory|ifmaxaddr|id|maxage|root|Configuration:|Address|tunnel|agrprivacy|scheduler|netif)/;
const UP_WORDS = new Set(['active', 'associated']);

/** Reads a line below the head of an adapter, of any `ifconfig`. */
export function readIfconfigLine(adapter: AdapterDraft, text: string, line: number): Step {
  const words = wordsOf(text);
  const [label = '', value = ''] = words;
  if (label === 'inet' && readInet(adapter, words, line)) return 'read';
  if (label === 'inet6' && addAddress(adapter, sides(value)[0], undefined, line)) return 'read';
  if (text.includes('inet') && readOldInet(adapter, text, line)) return 'read';
  if (MAC_LABELS.has(label)) {
    const mac = macOf(value);
    if (mac !== undefined) adapter.mac = { value: mac, line };
    return mac === undefined ? 'pass' : 'read';
  }
  if (label === 'status:') {
    adapter.isUp = { value: UP_WORDS.has(value), line };
    return 'read';
  }
  if (label === 'media:') {
    readMedia(adapter, text, line);
    return 'read';
  }
  if (label === 'ssid' || label === 'ieee80211:') {
    adapter.kind = 'wifi';
    return 'read';
  }
  return readOldFlags(adapter, text, line) || COUNTS.test(label) || MORE.test(label) ? 'read' : 'pass';
}

function readInet(adapter: AdapterDraft, words: readonly string[], line: number): boolean {
  const [address, length] = sides(words[1] ?? '');
  return addAddress(adapter, address, after(words, 'netmask') ?? length, line);
}

function readOldInet(adapter: AdapterDraft, text: string, line: number): boolean {
  const [, address, mask] = OLD_INET.exec(text) ?? [];
  if (address !== undefined) return addAddress(adapter, address, mask, line);
  const ipv6 = OLD_INET6.exec(text)?.[1];
  return ipv6 !== undefined && addAddress(adapter, ipv6, undefined, line);
}

function readOldFlags(adapter: AdapterDraft, text: string, line: number): boolean {
  const found = OLD_FLAGS.exec(text)?.[1];
  if (found === undefined) return false;
  const flags = found.split(' ');
  adapter.isUp = { value: flags.includes('UP') && flags.includes('RUNNING'), line };
  if (adapter.kind === 'unknown' && flags.includes('POINTOPOINT')) adapter.kind = 'vpn';
  return true;
}
