import { spawnSync } from 'node:child_process';

/** A throw-away namespace with what a pool is made of: a bridge, a veth port that can be isolated, NAT rules. */
const TRIAL = `
ip link add name b0 type bridge && ip link add name p0 type veth peer name p1 && ip link set p0 master b0 &&
ip link set dev p0 type bridge_slave isolated on &&
printf 'table ip t {\\nchain c {\\ntype nat hook postrouting priority 100;\\noifname "b0" masquerade;\\n}\\nchain f {\\ntype filter hook forward priority 0;\\nct state invalid drop;\\n}\\n}\\n' | nft -f - &&
/usr/bin/python3 -c 'import ctypes, socket; socket.socket(socket.AF_PACKET, socket.SOCK_RAW)' && /usr/bin/ping -V
`;

/** Why real networks can't be built here, in words; undefined where they can. */
export function cannotRun(): string | undefined {
  if (process.platform !== 'linux') return 'real networks need Linux';
  if (process.getuid?.() !== 0) return 'real networks need root';
  const { status, stderr, error } = spawnSync('unshare', ['-n', 'sh', '-c', TRIAL], { encoding: 'utf8' });
  if (error) return `real networks need unshare: ${error.message}`;
  return status === 0 ? undefined : `real networks can't be built here: ${stderr.trim()}`;
}
