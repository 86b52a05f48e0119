import { describe, expect, test } from 'vitest';
import { commandsOn } from '../../src/here/commands.js';
import { gather } from '../../src/here/gather.js';
import { thisMachine } from '../../src/here/machine.js';
import { PARSERS } from '../../src/intake/parsers.js';
import { read } from '../../src/intake/read.js';
import { inWords } from '../../src/messages/say.js';
import { showAddress } from '../../src/values/address.js';
import { printed, standIn } from './stand-in.js';

const ADDRESSES = JSON.stringify([
  {
    ifindex: 2,
    ifname: 'eth0',
    flags: ['BROADCAST', 'MULTICAST', 'UP', 'LOWER_UP'],
    operstate: 'UP',
    link_type: 'ether',
    address: '02:00:5e:10:00:05',
    addr_info: [{ family: 'inet', local: '172.23.40.5', prefixlen: 24, scope: 'global', label: 'eth0' }],
  },
]);
const ROUTES = JSON.stringify([{ dst: 'default', gateway: '172.23.40.1', dev: 'eth0', flags: [] }]);
const NEIGHBOURS = JSON.stringify([
  { dst: '172.23.40.57', dev: 'eth0', lladdr: '02:00:5e:10:00:57', state: ['REACHABLE'] },
]);
const ARP = [
  'Address                  HWtype  HWaddress           Flags Mask            Iface',
  '172.23.40.57             ether   02:00:5e:10:00:57   C                     eth0',
  '',
].join('\n');

test('the outputs stand behind their prompts in one text that reads', async () => {
  const machine = standIn(
    {
      'ip -j addr': printed(`${ADDRESSES}\n`),
      'ip -j route': printed(`${ROUTES}\n`),
      'ip -j neigh': printed(`${NEIGHBOURS}\n`),
    },
    { '/etc/resolv.conf': 'nameserver 172.23.40.1\n' },
  );
  const { text, ran, missed } = await gather(commandsOn('linux'), machine);
  expect(text).toBe(
    [
      `$ ip -j addr\n${ADDRESSES}\n`,
      `$ ip -j route\n${ROUTES}\n`,
      `$ ip -j neigh\n${NEIGHBOURS}\n`,
      '$ cat /etc/resolv.conf\nnameserver 172.23.40.1\n',
    ].join('\n'),
  );
  expect(ran).toEqual(['ip -j addr', 'ip -j route', 'ip -j neigh', 'cat /etc/resolv.conf']);
  expect(missed).toEqual([]);
  expect(machine.asked).toEqual([
    'ip -j addr (5000)',
    'ip -j route (5000)',
    'ip -j neigh (5000)',
    '/etc/resolv.conf',
  ]);
  const { seen, unread } = read(text, PARSERS);
  expect(unread).toEqual([]);
  expect(seen.adapters.map(({ name }) => name)).toEqual(['eth0']);
  expect(seen.routes.map(({ via }) => via && showAddress(via))).toEqual(['172.23.40.1']);
  expect(seen.neighbours.map(({ mac }) => mac)).toEqual(['02:00:5e:10:00:57']);
  expect(seen.dns.map(({ value }) => showAddress(value))).toEqual(['172.23.40.1']);
});

test('a command that is missing is named, and another stands in for it', async () => {
  const machine = standIn({ 'arp -n': printed(ARP), 'ip -j addr': printed(ADDRESSES) });
  const { text, ran, missed } = await gather(commandsOn('linux'), machine);
  expect(ran).toEqual(['ip -j addr', 'arp -n']);
  expect(missed.map(inWords)).toEqual([
    'This computer has no command ip -j route.',
    'This computer has no command route -n.',
    'This computer has no command ip -j neigh.',
    'This computer has no readable file /etc/resolv.conf.',
  ]);
  expect(read(text, PARSERS).seen.neighbours).toHaveLength(1);
  expect(machine.asked).not.toContain('ifconfig (5000)');
});

test.each([
  [{ kind: 'late' }, 'ifconfig gave no answer within 5 seconds.'],
  [{ kind: 'too-long' }, 'ifconfig printed more than can be read.'],
  [{ kind: 'not-started' }, 'ifconfig could not be started.'],
  [printed('half of it', 3), 'ifconfig ended with the fault 3.'],
] as const)('a command that fails is passed over: %j', async (how, sentence) => {
  const { text, ran, missed } = await gather(
    commandsOn('darwin'),
    standIn({ ifconfig: how, 'arp -an': printed('') }),
  );
  expect(missed.map(inWords)[0]).toBe(sentence);
  expect(missed).toHaveLength(3);
  expect(ran).toEqual(['arp -an']);
  expect(text).not.toContain('half of it');
});

test('the old letters of a Windows console are read', async () => {
  const output = Uint8Array.from(
    [...'Standardgateway f'].map((it) => it.charCodeAt(0)).concat(0x81, 0x72, 0x0d, 0x0a),
  );
  const machine = standIn({ 'arp -a': { kind: 'ended', status: 0, output, errors: new Uint8Array() } });
  expect((await gather(commandsOn('win32'), machine)).text).toContain('Standardgateway für');
});

test('nothing is run on a system that is not known', async () => {
  const machine = standIn({});
  expect(await gather(commandsOn('plan9'), machine)).toEqual({ text: '', ran: [], missed: [] });
  expect(machine.asked).toEqual([]);
});

describe.skipIf(process.platform !== 'linux')('on this computer (Linux only)', () => {
  test('the real commands are run, and what they print is read', async () => {
    const { text, ran } = await gather(commandsOn('linux'), thisMachine());
    expect(ran.length).toBeGreaterThan(0);
    for (const command of ran) expect(text).toContain(`$ ${command}\n`);
    const { seen, unread } = read(text, PARSERS);
    expect(
      seen.adapters.flatMap(({ addresses }) => addresses.map(({ address }) => showAddress(address))),
    ).toContain('127.0.0.1');
    expect(unread.filter(({ text: line }) => line.startsWith('$ '))).toEqual([]);
  });
});
