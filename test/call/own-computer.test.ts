import { describe, expect, test } from 'vitest';
import { nextForComputer } from '../../src/call/own-computer.js';
import { readPaste } from '../../src/intake/paste.js';
import { withTried } from '../../src/intake/with-tried.js';
import { address } from '../arithmetic/given.js';

const ADDR = (address: string, more = ''): string =>
  `2: eth0: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 qdisc noqueue state UP group default qlen 1000
    link/ether 02:00:5e:10:00:05 brd ff:ff:ff:ff:ff:ff
    inet ${address} brd 172.23.40.255 scope global eth0
       valid_lft forever preferred_lft forever
${more}`;
const ROUTE = (via: string): string => `\n$ ip route\ndefault via ${via} dev eth0 onlink\n`;
const next = (text: string): string => nextForComputer(readPaste(text));

describe('what to do first about the computer itself', () => {
  test.each([
    ['outside its range', '172.23.99.1', 'lies outside its range 172.23.40.0/24'],
    ['its own address', '172.23.40.5', 'is no other device in its range'],
    ['the address of the whole range', '172.23.40.0', 'is no other device in its range'],
    ['the address of everybody', '172.23.40.255', 'is no other device in its range'],
    ['the router', '172.23.40.1', 'Nothing is wrong with this computer itself'],
  ])('where its gateway is %s', (_, gateway, words) => {
    expect(next(ADDR('172.23.40.5/24', ROUTE(gateway)))).toContain(words);
  });

  test('a second address whose range holds the gateway is enough', () => {
    const second =
      '    inet 10.77.5.9/24 scope global secondary eth0\n       valid_lft forever preferred_lft forever\n';
    expect(next(ADDR('172.23.40.5/24', second + ROUTE('10.77.5.1')))).toContain('Nothing is wrong');
  });

  test('no gateway, no address, an address of its own making, and a tunnel are named', () => {
    expect(next(ADDR('172.23.40.5/24'))).toContain('has no gateway');
    expect(next('')).toContain('put the network lead of this computer in');
    expect(next(ADDR('169.254.7.9/16'))).toContain('gave itself 169.254.7.9');
    const tunnel = `3: tun0: <POINTOPOINT,MULTICAST,NOARP,UP,LOWER_UP> mtu 1500 qdisc fq_codel state UNKNOWN group default qlen 500
    link/none
    inet 10.77.9.6/24 scope global tun0
       valid_lft forever preferred_lft forever\n`;
    expect(next(ADDR('172.23.40.5/24', tunnel + ROUTE('172.23.40.1')))).toContain('turn the VPN "tun0" off');
  });

  test('a gateway is silent only where a ping and every port were', () => {
    const read = readPaste(ADDR('172.23.40.5/24', ROUTE('172.23.40.1')));
    const target = { target: '172.23.40.1', address: address('172.23.40.1'), line: 1 };
    const pings = [{ ...target, sent: 3, received: 0, troubles: [], hasDuplicates: false }];
    const ports = (isOpen: boolean) => [{ ...target, port: 80, isOpen }];
    const words = ['tried'];
    expect(nextForComputer(withTried(read, { words, pings, ports: ports(false) }))).toContain(
      'Nothing answers at 172.23.40.1',
    );
    expect(nextForComputer(withTried(read, { words, pings, ports: ports(true) }))).toContain(
      'Nothing is wrong',
    );
    expect(nextForComputer(withTried(read, { words, ports: ports(false) }))).toContain('Nothing is wrong');
  });
});
