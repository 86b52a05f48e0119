import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const TOOLS = [
  ...['ip', 'bridge', 'ss', 'nft', 'dnsmasq', 'busybox', 'conntrack', 'openssl', 'timeout'],
  ...['ping', 'arping', 'dig', 'curl', 'traceroute', 'ethtool', 'tc', 'turnserver', 'tayga'],
];

const TRY = `set -e
ip link add name veth-one type veth peer name veth-two
ip link set veth-one gso_max_segs 1
ip link add name bridge-one type bridge
ip link set veth-one master bridge-one
ip tuntap add dev tun-one mode tun
ip addr add 2001:db8::1/64 dev bridge-one nodad
nft -f - <<'END'
table netdev try {
  chain in {
    type filter hook ingress device "veth-two" priority 0;
    numgen random mod 100 < 15 drop
  }
}
table ip nat {
  chain out {
    type nat hook postrouting priority 100;
    masquerade
  }
}
END`;

let known: string | null | undefined;

/** Why no lab can be built here, in words, or null where it can. Asked of the machine once. */
export function labMissing(): string | null {
  if (known === undefined) known = reason();
  return known;
}

function reason(): string | null {
  if (process.platform !== 'linux') return 'the lab needs Linux';
  if (process.getuid?.() !== 0) return 'the lab needs root';
  const absent = TOOLS.filter((tool) => spawnSync('sh', ['-c', `command -v ${tool}`]).status !== 0);
  if (!existsSync('/usr/bin/python3')) absent.push('/usr/bin/python3');
  if (!existsSync('/dev/net/tun')) absent.push('/dev/net/tun (for the translation from IPv6)');
  if (absent.length > 0) return `the lab needs these tools: ${absent.join(', ')}`;
  const tried = spawnSync('unshare', ['-n', 'sh', '-c', TRY], { encoding: 'utf8' });
  if (tried.status === 0) return null;
  return `this kernel can't build the lab: ${(tried.stderr || 'unshare -n failed').trim()}`;
}
