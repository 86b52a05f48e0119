import { once } from 'node:events';
import { type AddressInfo, createServer } from 'node:net';
import { expect, test } from 'vitest';
import { pingArgv, thisProber } from '../../src/here/prober.js';
import { type Address, showAddress } from '../../src/values/address.js';
import { printed, standIn } from './stand-in.js';

const LOOPBACK: Address = { kind: 'ipv4', bits: 0x7f00_0001 };
const CAMERA: Address = { kind: 'ipv4', bits: 0xac17_2839 };

test.each([
  ['linux', 'ping -n -c 3 -W 2 172.23.40.57'],
  ['darwin', 'ping -n -c 3 -W 2000 172.23.40.57'],
  ['win32', 'ping -n 3 172.23.40.57'],
])('the ping command of %s sends three', (platform, typed) => {
  expect(pingArgv(CAMERA, platform).join(' ')).toBe(typed);
});

test('what ping prints is handed over even where nothing answered; a missing ping gives nothing', async () => {
  const silent = standIn({ 'ping -n -c 3 -W 2 172.23.40.57': printed('3 packets transmitted', 1) });
  expect(await thisProber(silent, 'linux').ping(CAMERA)).toBe('3 packets transmitted\n');
  expect(await thisProber(standIn({}), 'linux').ping(CAMERA)).toBeUndefined();
});

test('a port that listens is open and gets no byte; one that does not is closed', async () => {
  const prober = thisProber(standIn({}), 'linux');
  const bytes: number[] = [];
  const server = createServer((socket) =>
    socket.on('data', (chunk) => bytes.push(...chunk)).on('error', () => 0),
  );
  await once(server.listen(0, '127.0.0.1'), 'listening');
  const { port } = server.address() as AddressInfo;
  const ended = once(server, 'connection').then(([socket]) => once(socket, 'close'));
  expect(await prober.knock(LOOPBACK, port)).toBe('open');
  await ended;
  await once(server.close(), 'close');
  expect(bytes).toEqual([]);
  expect(await prober.knock(LOOPBACK, port)).toBe('closed');
});

test('the resolver of the system is asked', async () => {
  const { outcome, addresses } = await thisProber(standIn({}), 'linux').lookUp('localhost');
  expect(outcome).toBe('answered');
  expect(addresses.map(showAddress)).toContain('127.0.0.1');
});

test('a name that nobody can have ends within three seconds', async () => {
  const begun = performance.now();
  // RFC 6761, section 6.4.
  const { outcome, addresses } = await thisProber(standIn({}), 'linux').lookUp('camera.invalid');
  expect(performance.now() - begun).toBeLessThan(4000);
  expect(['no-such-name', 'no-answer']).toContain(outcome);
  expect(addresses).toEqual([]);
});
