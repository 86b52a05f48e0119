import { describe, expect, test } from 'vitest';
import { bothWays } from '../../../src/arithmetic/walk/both-ways.js';
import { walk } from '../../../src/arithmetic/walk/walk.js';
import { words } from '../given.js';
import { host, ROUTER, siteWith } from './a-site.js';

describe('a walk in words', () => {
  test('follows question and answer, decision by decision', () => {
    const site = siteWith([host('camera', 'lan 172.23.40.21/25', '172.23.40.1')]);
    expect(words(walk(site, 'laptop', 'camera').lines)).toEqual([
      'laptop calls camera at 172.23.40.21.',
      'laptop: 172.23.40.21 is inside its own range 172.23.40.0/24, so it looks for 172.23.40.21 itself on lan.',
      'ARP: camera answers for 172.23.40.21.',
      'camera has it.',
      'camera answers to 172.23.40.184.',
      'camera: 172.23.40.184 is outside its own range 172.23.40.0/25, so it hands it to its default gateway 172.23.40.1 on lan.',
      'ARP: router answers for 172.23.40.1.',
      'router never saw the question, so it drops the answer.',
      'laptop reaches camera, but the answer is lost on its way back.',
    ]);
    expect(words(bothWays(site, 'laptop', 'camera').lines).at(-1)).toBe(
      'camera reaches laptop, but not the other way round.',
    );
  });

  test('tells what NAT puts in place of what, out and back', () => {
    expect(words(walk(siteWith(), 'camera', 'internet').lines)).toEqual([
      'camera calls internet at 203.0.113.10.',
      'camera: 203.0.113.10 is outside its own range 172.23.40.0/24, so it hands it to its default gateway 172.23.40.1 on lan.',
      'ARP: router answers for 172.23.40.1.',
      'router: 203.0.113.10 is outside its own range 198.51.100.0/28, so it hands it to its default gateway 198.51.100.1 on wan.',
      'router puts its own address 198.51.100.2 in place of the sender 172.23.40.21.',
      'ARP: internet answers for 198.51.100.1.',
      'internet has it.',
      'internet answers to 198.51.100.2.',
      'internet: 198.51.100.2 is inside its own range 198.51.100.0/28, so it looks for 198.51.100.2 itself on wan.',
      'ARP: router answers for 198.51.100.2.',
      'router remembers the question and puts 172.23.40.21 back in place of 198.51.100.2.',
      'router: 172.23.40.21 is inside its own range 172.23.40.0/24, so it looks for 172.23.40.21 itself on lan.',
      'ARP: camera answers for 172.23.40.21.',
      'camera has it.',
      'camera reaches internet, and the answer comes back.',
    ]);
  });

  test('tells who answers: nobody, several, or one in place of another', () => {
    const nobody = walk(siteWith([], ['lan']), 'laptop', 'camera').lines;
    expect(words(nobody).slice(-3)).toEqual([
      'ARP: nobody on lan answers for 172.23.40.21.',
      'laptop has nobody to send it to. It stops here.',
      'laptop does not reach camera.',
    ]);
    const twice = siteWith([host('printer', 'lan 172.23.40.21/24', '172.23.40.1')]);
    expect(words(walk(twice, 'laptop', 'camera').lines).slice(-3)).toEqual([
      'ARP: 2 devices answer for 172.23.40.21: printer, camera.',
      'Whoever answers first gets it. It may be the wrong device.',
      'Whether laptop reaches camera is chance: one address is in use twice.',
    ]);
    const proxied = siteWith([
      host('camera', 'lan 172.23.40.21/24', '172.23.40.21'),
      { ...ROUTER, proxyArp: true },
    ]);
    expect(words(walk(proxied, 'camera', 'internet').lines).slice(1, 3)).toEqual([
      'camera: its default gateway is its own address, so it takes every address for a neighbour and looks for 203.0.113.10 itself on lan.',
      'ARP: router answers in place of 203.0.113.10.',
    ]);
  });

  test.each([
    [
      '0.0.0.0',
      'camera: 203.0.113.10 is outside its own range, and it has no default gateway. It cannot send.',
    ],
    [
      '172.23.99.1',
      'camera: 203.0.113.10 is outside its own range, and so is its default gateway. It cannot send.',
    ],
    ['172.23.40.184', 'laptop is no router and passes nothing on. It vanishes without a word.'],
    ['172.23.40.254', 'camera has nobody to send it to. It stops here.'],
  ])('tells why it stops with gateway %s', (gateway, line) => {
    const site = siteWith([host('camera', 'lan 172.23.40.21/24', gateway)]);
    expect(words(walk(site, 'camera', 'internet').lines).at(-2)).toBe(line);
  });

  test('tells what becomes of a private address on the internet and of a guest', () => {
    const elsewhere = siteWith([host('camera', 'lan 10.77.5.21/24', '10.77.5.1')]);
    expect(words(walk(elsewhere, 'laptop', 'camera').lines).at(-2)).toBe(
      'internet does not carry 10.77.5.21: that is no public address. It stops here.',
    );
    expect(words(walk(siteWith(), 'phone', 'camera').lines).at(-2)).toBe(
      'router keeps these two networks apart and passes nothing between them.',
    );
  });
});
