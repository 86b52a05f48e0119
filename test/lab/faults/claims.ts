import type { Host, Lab } from '../types.js';
import type { Undo } from './fault.js';

/** Says fifty times a second by ARP (RFC 826, RFC 5227 section 3: an announcement) that the address is its own. */
const CLAIM = `
import socket, sys, time
name, address = sys.argv[1:]
out = socket.socket(socket.AF_PACKET, socket.SOCK_RAW)
out.bind((name, 0x0806))
mac = out.getsockname()[4]
ip = socket.inet_aton(address)
every = b"\\xff" * 6
frame = every + mac + b"\\x08\\x06\\0\\1\\x08\\0\\6\\4\\0\\1" + mac + ip + b"\\0" * 6 + ip
for _ in range(50 * 1200):
    out.send(frame)
    time.sleep(0.02)
`;

const HEARERS = [
  ['router', 'lan0'],
  ['computer', 'eth0'],
  ['phone', 'wlan0'],
] as const;

/**
 * The twin claims an address louder than its holder. The site's devices believe the last one they heard, as many do;
 * this kernel would stay with the first for a second (arp(7), locktime). The camera keeps the router's entry, for each time
 * it asked for it the router would hear of the camera.
 */
export async function claim(lab: Lab, address: string): Promise<Undo> {
  const believe = async (locktime: string) => {
    for (const [host, name] of HEARERS) {
      await lab.run(host as Host, ['sysctl', '-qw', `net.ipv4.neigh.${name}.locktime=${locktime}`]);
    }
  };
  const remember = (ms: number) =>
    lab.run('camera', ['sysctl', '-qw', `net.ipv4.neigh.eth0.base_reachable_time_ms=${ms}`]);
  await believe('0');
  await remember(900_000);
  lab.daemon('twin-claims', 'twin', ['/usr/bin/python3', '-c', CLAIM, 'eth0', address]);
  return async () => {
    await lab.stop('twin-claims');
    await believe('100');
    await remember(30_000);
  };
}
