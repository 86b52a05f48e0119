import { describe, expect, it } from 'vitest';
import { type Consent, type Eyes, type Known, lookHere } from '../../src/cli/look-here.js';
import { commandsOn } from '../../src/here/commands.js';
import type { Discovered } from '../../src/here/discovery/discover.js';
import { address } from '../arithmetic/given.js';
import { printed, standIn } from '../here/stand-in.js';

const ADDRESSES = `[{"ifindex":2,"ifname":"eth0","flags":["BROADCAST","UP","LOWER_UP"],"mtu":1500,"operstate":"UP","link_type":"ether","address":"02:00:5e:10:00:05","addr_info":[{"family":"inet","local":"172.23.40.5","prefixlen":24,"scope":"global","label":"eth0"}]}]`;
const ROUTES = `[{"dst":"default","gateway":"172.23.40.1","dev":"eth0","flags":[]}]`;
const camera = address('172.23.40.57');

/** A computer on which the camera answers a ping or not, and what was done with it. */
function computer({ answers = true, found = [] }: { answers?: boolean; found?: Discovered['found'] } = {}) {
  const machine = standIn(
    {
      'ip -j addr': printed(ADDRESSES),
      'ip -j route': printed(ROUTES),
      'ip -j neigh': printed('[ ]'),
    },
    { '/etc/resolv.conf': 'nameserver 172.23.40.1\n' },
  );
  const done: string[] = [];
  const replies = answers ? '3 received, 0% packet loss' : '0 received, 100% packet loss';
  const eyes: Eyes = {
    commands: commandsOn('linux'),
    machine,
    prober: {
      ping: async ({ bits }) => {
        done.push(`ping ${bits % 256}`);
        const host = `172.23.40.${bits % 256}`;
        return `PING ${host} (${host}) 56(84) bytes of data.\n\n--- ${host} ping statistics ---\n3 packets transmitted, ${replies}, time 2003ms\n`;
      },
      knock: async ({ bits }, port) => {
        done.push(`knock ${bits % 256}:${port}`);
        return 'closed';
      },
      lookUp: async (name) => {
        done.push(`look up ${name}`);
        return { outcome: 'no-answer', addresses: [] };
      },
    },
    search: async () => {
      done.push('search');
      return { found };
    },
  };
  return { eyes, machine, done };
}

/** Looks with these consents; gives what was told, in order, with the questions between. */
async function look(eyes: Eyes, agreed: readonly Consent[], known: Known = { camera }) {
  const told: string[] = [];
  const desk = {
    offers: () => true,
    agrees: async (to: Consent) => {
      told.push(`agree to ${to}?`);
      return agreed.includes(to);
    },
    camera: async () => {
      told.push('which camera?');
      return undefined;
    },
    tell: (lines: readonly string[]) => void told.push(...lines),
  };
  const looked = await lookHere(eyes, desk, known);
  return { paste: looked?.paste, given: looked?.given, told };
}

describe('looking at this computer', () => {
  it('runs nothing before somebody agreed, having seen what it would be', async () => {
    const { eyes, machine, done } = computer();
    const { paste, told } = await look(eyes, []);
    expect(paste).toBeUndefined();
    expect([machine.asked, done]).toEqual([[], []]);
    const shown = told.slice(0, told.indexOf('agree to read?')).join('\n');
    for (const command of ['ip -j addr', 'ip -j route', 'ip -j neigh', 'cat /etc/resolv.conf'])
      expect(shown).toContain(command);
  });

  it('tries nothing without a second yes, and calls nobody without a third', async () => {
    const { eyes, done } = computer({ answers: false });
    const { paste, told } = await look(eyes, ['read']);
    expect(paste?.reading.seen.adapters.map(({ name }) => name)).toEqual(['eth0']);
    expect(done).toEqual([]);
    expect(told).toContain('agree to try?');
    expect(told).toContain('agree to search?');
  });

  it('tries the camera and the router, each way once, and nobody else', async () => {
    const { eyes, done } = computer();
    const { paste, given } = await look(eyes, ['read', 'try', 'search']);
    expect(given).toEqual(camera);
    expect(done.sort()).toEqual(
      [
        'knock 1:443',
        'knock 1:80',
        'knock 57:443',
        'knock 57:554',
        'knock 57:80',
        'ping 1',
        'ping 57',
      ].sort(),
    );
    expect(paste?.reading.seen.pings.map(({ received }) => received)).toEqual([3, 3]);
  });

  it('calls for cameras only where the one asked for did not answer', async () => {
    const { eyes, done } = computer({ answers: false });
    await look(eyes, ['read', 'try', 'search']);
    expect(done).toContain('search');
  });

  it('asks for the camera where nobody gave it, and takes the one that answers the call', async () => {
    const found = [
      {
        endpoint: 'urn:uuid:1',
        relatesTo: 'urn:uuid:2',
        types: [],
        names: ['North Gate'],
        addresses: [camera],
        from: camera,
      },
    ];
    const { eyes } = computer({ found });
    const { paste, given, told } = await look(eyes, ['read', 'search'], {});
    expect(given).toBeUndefined();
    expect(told).toContain('which camera?');
    const cameras = paste?.reading.seen.adapters.filter(({ owner }) => owner === 'camera') ?? [];
    expect(cameras.map(({ name, addresses }) => [name, addresses[0]?.address])).toEqual([
      ['North Gate', camera],
    ]);
    expect(paste?.text.split('\n')[(cameras[0]?.addresses[0]?.line ?? 0) - 1]).toContain(
      'North Gate answered',
    );
  });

  it('says so on a system that it cannot read', async () => {
    const { eyes } = computer();
    const { told } = await look({ ...eyes, commands: [] }, ['read']);
    expect(told).toEqual(['It is not known how this system is read. Paste what its network settings show.']);
  });
});
