import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Probed } from '../../src/here/probes.js';
import { sampleAnswer } from './discovery/sample-answer.js';
import { atTheCamera, atTheComputer, setUp, takeDown, whyNoSite } from './site/site.js';

const WHY = whyNoSite();

describe.skipIf(WHY !== '')(`on a site of two namespaces${WHY === '' ? '' : ` (left out: ${WHY})`}`, () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'whydark-site-'));
    setUp();
  });
  afterEach(() => {
    takeDown();
    rmSync(folder, { recursive: true });
  });

  test('cameras in and outside the range of the computer are found and explained', async () => {
    const answer = (id: string, xaddrs: string) =>
      sampleAnswer({ relatesTo: 'ASKED', matches: [{ endpoint: `urn:uuid:${id}`, xaddrs }] });
    const heard = await atTheCamera(
      'responder.py',
      '172.23.40.57',
      JSON.stringify([
        ['172.23.40.57', answer('1', 'http://172.23.40.57/onvif/device_service')],
        ['10.77.5.20', answer('2', 'http://10.77.5.20/onvif/device_service')],
        ['203.0.113.9', answer('3', 'http://172.23.40.99/onvif/device_service')],
        ['172.23.40.57', sampleAnswer({ relatesTo: 'urn:uuid:another' })],
      ]),
    );
    expect(await atTheComputer(folder, 'search', '172.23.40.5')).toEqual([
      'The camera North Gate answered from 172.23.40.57. That is in the range 172.23.40.0/24 of this computer, so a browser here can open it.',
      'The camera North Gate answered. Its address 10.77.5.20 is in none of the ranges of this computer, so a browser here cannot open it. Give this computer the address 10.77.5.21 with the mask 255.255.255.0 for a while.',
    ]);
    const probes = heard.map((line) => JSON.parse(line));
    // One datagram, from the chosen address, that no router passes on.
    expect(probes.map(({ ttl, sender }) => [ttl, sender])).toEqual([[[1], '172.23.40.5']]);
    expect(probes[0].asked).toMatch(/^urn:uuid:[0-9a-f-]{36}$/);
  });

  test('a search touches the group and nothing else', async () => {
    const wire = await atTheCamera('listener.py', 'eth0', '172.23.40.57');
    expect(await atTheComputer(folder, 'search', '172.23.40.5')).toEqual([]);
    expect(wire.filter((line) => !line.startsWith('2 '))).toEqual(['udp 239.255.255.250:3702']);
  });

  test('probes touch the camera and the router at their ports, and nothing else', async () => {
    const wire = await atTheCamera('listener.py', 'eth0', '172.23.40.57');
    // Nobody has the router's address.
    const { ports, pings } = (await atTheComputer(folder, 'probe', '172.23.40.57', '172.23.40.1')) as Probed;
    expect(ports?.map(({ target, port, isOpen }) => [target, port, isOpen])).toEqual([
      ['172.23.40.57', 80, true],
      ['172.23.40.57', 443, false],
      ['172.23.40.57', 554, true],
      ['172.23.40.1', 80, false],
      ['172.23.40.1', 443, false],
    ]);
    const touched = new Set(wire);
    const expected = ['tcp 172.23.40.57:443', 'tcp 172.23.40.57:554', 'tcp 172.23.40.57:80'];
    expect([...touched].filter((line) => line.startsWith('tcp')).sort()).toEqual(expected);
    expect(touched).toContain('arp 172.23.40.1');
    const rest = [...touched].filter((line) => !line.startsWith('tcp'));
    const allowed = /^(?:arp 172\.23\.40\.(?:57|1|5)|icmp 172\.23\.40\.57)$/;
    expect(rest.filter((line) => !allowed.test(line))).toEqual([]);
    // Where there is a ping command it was used.
    expect(pings?.length).toBe(touched.has('icmp 172.23.40.57') ? 2 : 0);
  });
});
