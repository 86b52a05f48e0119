import type { Host, Router, Site } from '../../../src/arithmetic/walk/site.js';
import { address, mask } from '../../arithmetic/given.js';
import { host, on } from '../../arithmetic/walk/a-site.js';
import { type Network, SEGMENTS } from './network.js';

/** One way in which the kernel does otherwise than the walk, as small as it gets. */
export interface DifferenceClass {
  readonly name: string;
  readonly network: Network;
  /** What the walk says of each probe, and whether the ping was answered. */
  readonly walk: readonly string[];
  readonly answered: readonly boolean[];
  /** Of the echo requests that arrived, where only the sender's address is at issue: `device sender`. */
  readonly arrived?: string;
}

const ROUTER: Router = {
  kind: 'router',
  id: 'r1',
  name: 'r1',
  interfaces: [on('s0 172.23.40.1/24'), on('s1 172.23.41.1/24')],
};
const NEAR = host('h1', 's0 172.23.40.21/24', '172.23.40.1');
const FAR = host('h2', 's1 172.23.41.50/24', '172.23.41.1');

function network(
  devices: readonly (Host | Router)[],
  probes: Network['probes'],
  more: Omit<Network, 'site' | 'probes'> = {},
): Network {
  const site: Site = { segments: SEGMENTS.map((id) => ({ id, name: id })), devices };
  return { site, probes, ...more };
}

function on4(device: string, key: string, value: string): readonly [string, string, string] {
  return [device, `ipv4/conf/all/${key}`, value];
}

/** What the pool neutralises, each with the kernel's own way put back for one network. */
export const NEUTRALISED: readonly DifferenceClass[] = [
  {
    name: 'weak host: Linux answers ARP for an address of another link (arp_ignore 0)',
    network: network(
      [
        host('h1', 's0 172.23.40.21/16', '0.0.0.0'),
        { ...ROUTER, interfaces: [...ROUTER.interfaces].reverse() },
      ],
      [['h1', 'r1']],
      {
        settings: [on4('r1', 'arp_ignore', '0')],
      },
    ),
    walk: ['no-arp-answer'],
    answered: [true],
  },
  {
    name: 'source validation: a packet by another link than the way back is dropped (rp_filter 1)',
    network: network(
      [
        { ...NEAR, interfaces: [...NEAR.interfaces, on('s1 172.23.41.21/24')] },
        {
          ...FAR,
          gateway: address('172.23.41.1'),
          routes: [{ address: address('172.23.40.0'), mask: mask('/24'), via: address('172.23.41.1') }],
        },
        ROUTER,
      ],
      [['h2', 'h1']],
      { settings: [on4('h1', 'rp_filter', '1')] },
    ),
    walk: ['reaches'],
    answered: [false],
  },
  {
    name: 'martians: a router drops what comes from its own address (accept_local 0)',
    network: network(
      [
        { ...NEAR, interfaces: [on('s0 172.23.41.1/16')] },
        { ...FAR, id: 'h2', name: 'h2' },
        { ...ROUTER, proxyArp: true },
      ],
      [['h1', 'h2']],
      { settings: [on4('r1', 'accept_local', '0')] },
    ),
    walk: ['reply-lost: wrong-device'],
    answered: [false],
    arrived: '',
  },
  {
    name: 'redirects: the second ping is answered, the way back was learnt (send_redirects, accept_redirects 1)',
    network: network(
      [
        NEAR,
        host('h2', 's0 172.23.40.184/25', '172.23.40.254'),
        { ...ROUTER, interfaces: [on('s0 172.23.40.254/24')], dropsUnasked: true },
      ],
      [
        ['h1', 'h2'],
        ['h1', 'h2'],
      ],
      {
        settings: [
          on4('r1', 'send_redirects', '1'),
          on4('h2', 'accept_redirects', '1'),
          ['h2', 'ipv4/conf/s0/accept_redirects', '1'],
        ],
      },
    ),
    walk: ['reply-lost: unasked-reply', 'reply-lost: unasked-reply'],
    answered: [false, true],
  },
  {
    name: 'self-assigned addresses: Linux passes them on',
    network: network(
      [
        host('h1', 's0 169.254.17.4/16', '172.23.40.1', { takesOutsideGateway: true }),
        FAR,
        { ...ROUTER, interfaces: [...ROUTER.interfaces, on('s0 169.254.1.1/16')] },
      ],
      [['h1', 'h2']],
      { passesSelfAssigned: true },
    ),
    walk: ['self-assigned'],
    answered: [true],
  },
  {
    name: 'ends of a subnet: the highest address is a broadcast to whoever has that range',
    network: network([NEAR, host('h2', 's0 172.23.40.255/16', '0.0.0.0')], [['h1', 'h2']]),
    walk: ['reaches'],
    answered: [false],
    arrived: '',
  },
];

/** What the walk had wrong until the kernel was asked: now they agree. */
export const ONCE_WRONG: readonly Pick<DifferenceClass, 'name' | 'network'>[] = [
  {
    name: 'a static route by an own address makes its range neighbours, as such a gateway does',
    network: network(
      [
        host('h1', 's0 172.23.40.21/24', '0.0.0.0', {
          routes: [{ address: address('10.77.5.0'), mask: mask('/24'), via: address('172.23.40.21') }],
        }),
        host('h2', 's0 10.77.5.9/16', '0.0.0.0', {
          routes: [{ address: address('172.23.40.0'), mask: mask('/24'), via: address('10.77.5.9') }],
        }),
      ],
      [['h1', 'h2']],
    ),
  },
  {
    name: 'a gateway in two own ranges is asked for on the link of the longer prefix, not of the first',
    network: network(
      [
        host('h1', 's0 172.23.40.21/16', '172.23.41.1', {
          interfaces: [on('s0 172.23.40.21/16'), on('s1 172.23.41.21/24')],
        }),
        { ...ROUTER, interfaces: [on('s1 172.23.41.1/24'), on('s2 10.77.5.1/24')] },
        host('h2', 's2 10.77.5.9/24', '10.77.5.1'),
      ],
      [['h1', 'h2']],
    ),
  },
  {
    name: 'a gateway that is the second own address of a range: the sender is the first address, not the second',
    network: network(
      [
        host('h1', 's0 172.23.40.21/24', '172.23.40.22', {
          interfaces: [on('s0 172.23.40.21/24'), on('s0 172.23.40.22/24')],
        }),
        host('h2', 's0 10.77.5.9/24', '10.77.5.9'),
      ],
      [['h1', 'h2']],
    ),
  },
];
