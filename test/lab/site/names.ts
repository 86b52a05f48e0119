/** Names of the site's internet, and their addresses. `house.example` is the site itself, as its owner named it. */
const NAMES: readonly (readonly [name: string, address: string])[] = [
  ['rendezvous.example', '203.0.113.10'],
  ['time.example', '203.0.113.10'],
  ['stun.example', '203.0.113.10'],
  ['www.example', '203.0.113.40'],
  ['check.example', '203.0.113.40'],
  ['house.example', '198.51.100.2'],
];

/**
 * What stands before an IPv4 address behind the carrier's translator (RFC 6052). It is the firm's own: the well-known
 * 64:ff9b::/96 may not lead to addresses that are not of the open internet, and tayga holds all of a lab's to be such.
 */
export const TRANSLATED = '2001:db8:64::';

/** An IPv4 address as a phone with IPv6 only has to write it. */
export function translated(address: string): string {
  const [a = 0, b = 0, c = 0, d = 0] = address.split('.').map(Number);
  return `${TRANSLATED}${((a << 8) | b).toString(16)}:${((c << 8) | d).toString(16)}`;
}

const settings = (listen: string, lines: readonly string[]) =>
  `listen-address=${listen}
bind-interfaces
no-resolv
no-hosts
local=/example/
${lines.join('\n')}
pid-file
user=root
`;

/** Settings of the service's name server, which knows IPv4 addresses. */
export const serviceDns = (listen: string) =>
  settings(
    listen,
    NAMES.map(([name, address]) => `address=/${name}/${address}`),
  );

/**
 * Settings of the name server for phones with IPv6 only. No true DNS64 (RFC 6147): it asks nobody, but has the answers
 * that one would make of the service's.
 */
export const carrierDns = (listen: string) =>
  settings(
    listen,
    NAMES.map(([name, address]) => `host-record=${name},${translated(address)}`),
  );
