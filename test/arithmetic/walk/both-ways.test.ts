import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seenAsNeighbour } from '../../../src/arithmetic/seen-as-neighbour.js';
import { bothWays } from '../../../src/arithmetic/walk/both-ways.js';
import { walkData } from '../../../src/arithmetic/walk/data.js';
import type { Host, Site } from '../../../src/arithmetic/walk/site.js';
import { walk } from '../../../src/arithmetic/walk/walk.js';
import { bits, prefix, words } from '../given.js';
import { host, siteWith } from './a-site.js';

const LAN = { segments: [{ id: 'lan', name: 'lan' }] };

function alone(id: string, own: number, length: number): Host {
  const interfaces = [{ segment: 'lan', address: bits(own), mask: prefix(length) }];
  return { kind: 'host', id, name: id, interfaces };
}

describe('both ways', () => {
  test.each([
    ['172.23.40.21/24', 'both', 'laptop and camera reach each other.'],
    ['172.23.40.21/25', 'only-second', 'camera reaches laptop, but not the other way round.'],
    ['172.23.40.21/29', 'neither', 'Neither of laptop and camera reaches the other.'],
  ])('with the camera at %s: %s', (where, ways, line) => {
    const both = bothWays(siteWith([host('camera', `lan ${where}`, '172.23.40.1')]), 'laptop', 'camera');
    expect(both.ways).toBe(ways);
    expect(both.oneWay).toBe(ways === 'only-second');
    expect(words(both.lines).at(-1)).toBe(line);
  });

  test('name the one that reaches the other first', () => {
    const site = siteWith([host('camera', 'lan 172.23.40.21/25', '172.23.40.1')]);
    const both = bothWays(site, 'camera', 'laptop');
    expect(both.ways).toBe('only-first');
    expect(words(both.lines).at(-1)).toBe('camera reaches laptop, but not the other way round.');
  });

  test('two hosts without a router reach each other exactly when each takes the other for a neighbour', () => {
    const anyBits = fc.integer({ min: 1, max: 0xffffffff });
    const anyPrefix = fc.integer({ min: 0, max: 32 });
    fc.assert(
      fc.property(anyBits, anyPrefix, anyPrefix, anyPrefix, anyBits, (own, one, two, shared, noise) => {
        const kept = 2 ** (32 - shared);
        const other = own - (own % kept) + (noise % kept);
        fc.pre(other !== own && other !== 0);
        const site: Site = { ...LAN, devices: [alone('camera', own, one), alone('computer', other, two)] };
        const seen = seenAsNeighbour(bits(own), prefix(one), bits(other), prefix(two)).value;
        const { ways, first } = bothWays(site, 'camera', 'computer');
        expect(ways).toBe(seen === 'both' ? 'both' : 'neither');
        if (seen === 'only-camera')
          expect(first).toMatchObject({ outcome: 'reply-lost', back: { stop: 'no-gateway' } });
        if (seen === 'only-computer') expect(first.outcome).toBe('no-gateway');
      }),
      { numRuns: 2_000 },
    );
  });

  test('any camera settings give a walk that ends, each hop beginning where the one before it ended', () => {
    const near = fc.integer({ min: 0, max: 0xffff }).map((low) => bits(0xac170000 + low));
    fc.assert(
      fc.property(
        near,
        fc.integer({ min: 0, max: 32 }),
        near,
        fc.boolean(),
        (own, length, gateway, isIsolated) => {
          const interfaces = [{ segment: 'lan', address: own, mask: prefix(length) }];
          const camera: Host = { kind: 'host', id: 'camera', name: 'camera', interfaces, gateway };
          const site = siteWith([camera], isIsolated ? ['lan'] : []);
          for (const [from, to] of [
            ['camera', 'internet'],
            ['camera', 'laptop'],
            ['laptop', 'camera'],
          ] as const) {
            const { there, back, outcome } = walk(site, from, to);
            for (const { hops, stop } of back ? [there, back] : [there]) {
              hops.slice(1).forEach((hop, at) => {
                expect(hop.from).toBe(hops[at]?.to);
              });
              if (stop === undefined) expect(hops.every(({ answers }) => answers.length === 1)).toBe(true);
            }
            expect(outcome === 'reaches').toBe(there.stop === undefined && back?.stop === undefined);
          }
        },
      ),
      { numRuns: 1_000 },
    );
  });
});

describe('a walk as data', () => {
  test('has dotted addresses, the hops of both ways and where it stopped', () => {
    const site = siteWith([host('camera', 'lan 172.23.40.21/25', '172.23.40.1')]);
    expect(walkData(walk(site, 'laptop', 'camera'))).toEqual({
      from: 'laptop',
      to: 'camera',
      destination: '172.23.40.21',
      outcome: 'reply-lost',
      there: {
        hops: [
          {
            from: 'laptop',
            to: 'camera',
            segment: 'lan',
            because: 'neighbour',
            range: '172.23.40.0/24',
            source: '172.23.40.184',
            destination: '172.23.40.21',
            asked: '172.23.40.21',
            answers: [{ device: 'camera', byProxy: false }],
            swaps: [],
          },
        ],
        endsAt: 'camera',
      },
      back: {
        hops: [
          {
            from: 'camera',
            to: 'router',
            segment: 'lan',
            because: 'gateway',
            range: '172.23.40.0/25',
            source: '172.23.40.21',
            destination: '172.23.40.184',
            asked: '172.23.40.1',
            answers: [{ device: 'router', byProxy: false }],
            swaps: [],
          },
        ],
        endsAt: 'router',
        stop: 'unasked-reply',
      },
    });
  });

  test('can be written as JSON and says what NAT did', () => {
    const text = JSON.stringify(walkData(walk(siteWith(), 'camera', 'internet')));
    expect(text).toContain('{"what":"source","before":"172.23.40.21","after":"198.51.100.2"}');
    expect(text).toContain('{"what":"destination","before":"198.51.100.2","after":"172.23.40.21"}');
  });
});
