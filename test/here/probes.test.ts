import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { describe, expect, test } from 'vitest';
import type { Knock, Named, Prober } from '../../src/here/prober.js';
import { type Probe, probesFor, runProbes, type Targets, describe as words } from '../../src/here/probes.js';
import { inWords } from '../../src/messages/say.js';
import { type Address, showAddress } from '../../src/values/address.js';

const at = (text: string): Address => ({
  kind: 'ipv4',
  bits: ipaddr.IPv4.parse(text)
    .toByteArray()
    .reduce((sum, byte) => sum * 256 + byte, 0),
});
const CAMERA = at('172.23.40.57');
const ROUTER = at('172.23.40.1');

const REPLIED = `PING 172.23.40.57 (172.23.40.57) 56(84) bytes of data.
64 bytes from 172.23.40.57: icmp_seq=1 ttl=64 time=0.512 ms
64 bytes from 172.23.40.57: icmp_seq=3 ttl=64 time=0.488 ms

--- 172.23.40.57 ping statistics ---
3 packets transmitted, 2 received, 33.3333% packet loss, time 2034ms
rtt min/avg/max/mdev = 0.488/0.500/0.512/0.012 ms
`;
const UNREACHABLE = `PING 172.23.40.1 (172.23.40.1) 56(84) bytes of data.
From 172.23.40.5 icmp_seq=1 Destination Host Unreachable
From 172.23.40.5 icmp_seq=2 Destination Host Unreachable
From 172.23.40.5 icmp_seq=3 Destination Host Unreachable

--- 172.23.40.1 ping statistics ---
3 packets transmitted, 0 received, +3 errors, 100% packet loss, time 2046ms
`;

interface Recorded extends Prober {
  readonly touched: readonly string[];
}

/** A network that answers like this, and writes down what was touched. */
function network(
  answers: {
    readonly ping?: (address: Address) => string | undefined;
    readonly knock?: (port: number) => Knock;
    readonly named?: Named;
  } = {},
): Recorded {
  const touched: string[] = [];
  return {
    touched,
    ping: async (address) => {
      touched.push(`ping ${showAddress(address)}`);
      return answers.ping?.(address);
    },
    knock: async (address, port) => {
      touched.push(`${showAddress(address)}:${port}`);
      return answers.knock?.(port) ?? 'closed';
    },
    lookUp: async (name) => {
      touched.push(`name ${name}`);
      return answers.named ?? { outcome: 'no-answer', addresses: [] };
    },
  };
}

test('what will be tried is said beforehand', () => {
  const probes = probesFor({ camera: CAMERA, router: ROUTER, name: 'clock.example' });
  expect(probes.map((probe) => inWords(words(probe)))).toEqual([
    'Ping the camera at 172.23.40.57 three times.',
    'Knock at port 80 of the camera at 172.23.40.57, and hang up at once.',
    'Knock at port 443 of the camera at 172.23.40.57, and hang up at once.',
    'Knock at port 554 of the camera at 172.23.40.57, and hang up at once.',
    'Ping the router at 172.23.40.1 three times.',
    'Knock at port 80 of the router at 172.23.40.1, and hang up at once.',
    'Knock at port 443 of the router at 172.23.40.1, and hang up at once.',
    'Ask for the address of the name clock.example, as a browser on this computer would.',
  ]);
});

test('what is not known is not tried, and one address is tried once', () => {
  expect(probesFor({})).toEqual([]);
  expect(probesFor({ router: ROUTER }).map(({ kind }) => kind)).toEqual(['ping', 'port', 'port']);
  expect(probesFor({ camera: CAMERA, router: CAMERA })).toHaveLength(4);
});

test.each(['10.77.5.20', '172.16.0.9', '100.64.3.4', '169.254.7.8'])('%s may be tried', (address) => {
  expect(probesFor({ camera: at(address) }).map(({ kind }) => kind)).toEqual([
    'ping',
    'port',
    'port',
    'port',
  ]);
});

test.each([
  '203.0.113.9',
  '198.51.100.20',
  '127.0.0.1',
  '0.0.0.0',
  '224.0.0.1',
  '239.255.255.250',
  '255.255.255.255',
  '172.32.0.1',
  '100.128.0.1',
  '169.253.0.1',
  '11.0.0.1',
])('%s is refused with a sentence', (address) => {
  const probes = probesFor({ camera: at(address), router: ROUTER });
  expect(probes[0]?.kind).toBe('refused');
  expect(inWords(words(probes[0] as Probe))).toBe(
    `${address} is left alone. Only a camera and a router on site are tried, and this is no address of a local network.`,
  );
  expect(probes.slice(1).map(({ kind }) => kind)).toEqual(['ping', 'port', 'port']);
});

test.each([
  '',
  '.',
  'a b',
  '-o',
  'a..b',
  '203.0.113.9',
  '0x7f.1',
  '0x7f000001',
  '1',
  'a/b',
  'x'.repeat(64),
  'é.example',
])('the name "%s" is refused with a sentence', (name) => {
  const [probe, ...more] = probesFor({ name });
  expect(more).toEqual([]);
  expect(probe?.kind).toBe('refused');
  expect(inWords(words(probe as Probe))).toContain('is no name that can be looked up');
});

test('what came of it stands in the words of the readings, by the place of the probe', async () => {
  const prober = network({
    ping: (address) => (address.bits === CAMERA.bits ? REPLIED : UNREACHABLE),
    knock: (port) => (port === 554 ? 'closed' : 'open'),
    named: { outcome: 'answered', addresses: [at('198.51.100.7')] },
  });
  const { pings, ports, lookups, missed } = await runProbes(
    probesFor({ camera: CAMERA, router: ROUTER, name: 'clock.example' }),
    prober,
  );
  expect(missed).toEqual([]);
  expect(pings).toEqual([
    {
      target: '172.23.40.57',
      address: CAMERA,
      sent: 3,
      received: 2,
      average: 0.5,
      troubles: [],
      hasDuplicates: false,
      line: 1,
    },
    {
      target: '172.23.40.1',
      address: ROUTER,
      sent: 3,
      received: 0,
      troubles: Array.from({ length: 3 }, () => ({
        kind: 'host-unreachable',
        from: at('172.23.40.5'),
        line: 5,
      })),
      hasDuplicates: false,
      line: 5,
    },
  ]);
  expect(ports?.map(({ target, port, isOpen, line }) => [target, port, isOpen, line])).toEqual([
    ['172.23.40.57', 80, true, 2],
    ['172.23.40.57', 443, true, 3],
    ['172.23.40.57', 554, false, 4],
    ['172.23.40.1', 80, true, 6],
    ['172.23.40.1', 443, true, 7],
  ]);
  expect(lookups).toEqual([
    { name: 'clock.example', outcome: 'answered', addresses: [at('198.51.100.7')], line: 8 },
  ]);
});

test.each([
  ['no ping command', undefined],
  ['a ping without the right to send', 'ping: socket: Operation not permitted\n'],
  ['a ping that says nothing', ''],
])('%s is named, and nothing is made of it', async (_, said) => {
  const { pings, missed } = await runProbes(probesFor({ camera: CAMERA }), network({ ping: () => said }));
  expect(pings).toEqual([]);
  expect(missed.map(inWords)).toEqual([
    'This computer could not do it: Ping the camera at 172.23.40.57 three times.',
  ]);
});

test('a fault of this computer is no closed port, and a prober that throws stops nothing', async () => {
  const throwing: Prober = {
    ...network({ knock: () => 'untried' }),
    lookUp: () => Promise.reject(new Error('planted')),
  };
  const { ports, lookups, missed } = await runProbes(
    probesFor({ camera: CAMERA, name: 'clock.example' }),
    throwing,
  );
  expect(ports).toEqual([]);
  expect(lookups).toEqual([]);
  expect(missed).toHaveLength(5);
});

describe('never a scan', () => {
  const bits = fc.oneof(
    fc.integer({ min: 0, max: 0xffff_ffff }),
    fc
      .constantFrom('172.23.40.57', '172.23.40.1', '10.77.5.20', '203.0.113.9', '127.0.0.1')
      .map((it) => at(it).bits),
    fc.constantFrom(Number.NaN, -1, 1.5, 2 ** 32, Number.POSITIVE_INFINITY),
  );
  const address = bits.map((it): Address => ({ kind: 'ipv4', bits: it }));
  const name = fc.oneof(fc.constantFrom('clock.example', '203.0.113.9', '-h'), fc.string());

  /** Said apart from the code: ranges of RFC 1918, RFC 6598 and RFC 3927, as ipaddr.js knows them. */
  function isOnSite(text: string): boolean {
    return ['private', 'carrierGradeNat', 'linkLocal'].includes(ipaddr.IPv4.parse(text).range());
  }

  function expectBounded(touched: readonly string[]): void {
    const addresses = touched.flatMap((it) => /^(?:ping )?([\d.]+)(?::\d+)?$/.exec(it)?.[1] ?? []);
    expect(new Set(addresses).size).toBeLessThanOrEqual(2);
    expect(addresses.filter((it) => !isOnSite(it))).toEqual([]);
    const ports = touched.flatMap((it) => /:(\d+)$/.exec(it)?.[1] ?? []);
    expect(ports.filter((port) => !['80', '443', '554'].includes(port))).toEqual([]);
    expect(touched.filter((it) => it.startsWith('name ')).length).toBeLessThanOrEqual(1);
    expect(new Set(touched).size).toBe(touched.length);
    expect(touched.length).toBeLessThanOrEqual(9);
  }

  test('whatever the camera, the router and the name are', async () => {
    const option = <T>(it: fc.Arbitrary<T>) => fc.option(it, { nil: undefined });
    const targets = fc.record({ camera: option(address), router: option(address), name: option(name) });
    await fc.assert(
      fc.asyncProperty(targets, async (given: Targets) => {
        const prober = network();
        const probes = probesFor(given);
        await runProbes(probes, prober);
        expectBounded(prober.touched);
        // Nothing happens that was not said.
        const said = probes.map((probe) => inWords(words(probe))).join('\n');
        for (const it of prober.touched) {
          const [, where = it.slice('name '.length)] = /^(?:ping )?([\d.]+)(?::\d+)?$/.exec(it) ?? [];
          expect(said).toContain(where.slice(0, 39));
        }
      }),
    );
  });

  test('whoever made the list', async () => {
    const port = fc.oneof(fc.constantFrom(80, 443, 554, 22, 23, 0, 65_535), fc.integer());
    const probe = fc.oneof(
      fc.record({ kind: fc.constant('ping'), site: fc.constant('camera'), address }),
      fc.record({ kind: fc.constant('port'), site: fc.constant('router'), address, port }),
      fc.record({ kind: fc.constant('lookup'), name }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(probe, { maxLength: 40 }), async (probes) => {
        const prober = network();
        await runProbes(probes as readonly Probe[], prober);
        expectBounded(prober.touched);
      }),
    );
  });

  test('a list of a whole network is cut to two addresses', async () => {
    const prober = network();
    const probes = Array.from({ length: 254 }, (_, host): Probe => {
      return { kind: 'ping', site: 'camera', address: at(`172.23.40.${host + 1}`) };
    });
    await runProbes(probes, prober);
    expect(prober.touched).toEqual(['ping 172.23.40.1', 'ping 172.23.40.2']);
  });
});
