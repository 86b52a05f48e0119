import type { AdapterKind } from '../seen.js';

/** Names that Linux, macOS and the BSDs give by themselves. macOS calls Wi-Fi and lead alike (`en0`). */
const NAMES: readonly (readonly [RegExp, AdapterKind])[] = [
  [/^lo\d{0,3}$/, 'loopback'],
  [/^(?:ww|rmnet|pdp_ip|ccmni)/, 'mobile'],
  [/^(?:tun|tap|wg|utun|ppp|ipsec)/, 'vpn'],
  [/^(?:docker|br-|veth|virbr|vmnet|vboxnet|bridge|lxcbr|lxdbr|cni|dummy|ifb|vnet)/, 'virtual'],
  [/^(?:gif|stf|sit|awdl|llw|anpi|vmenet|feth|pflog|pfsync|enc)\d/, 'virtual'],
  [/^(?:wl|ath\d)/, 'wifi'],
  [/^(?:eth|en[a-zA-Z])/, 'lead'],
];

/** What an adapter hangs on, as far as its name tells. */
export function kindOfName(name: string): AdapterKind {
  return NAMES.find(([pattern]) => pattern.test(name))?.[1] ?? 'unknown';
}

/** The same with the flags that the system shows: a tunnel has two ends and no name of its own. */
export function kindOfAdapter(name: string, flags: readonly string[]): AdapterKind {
  const kind = kindOfName(name);
  if (kind !== 'unknown') return kind;
  if (flags.includes('LOOPBACK')) return 'loopback';
  return flags.includes('POINTOPOINT') ? 'vpn' : 'unknown';
}
