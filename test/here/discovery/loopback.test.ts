import { createSocket, type Socket } from 'node:dgram';
import { once } from 'node:events';
import { afterEach, describe, expect, test } from 'vitest';
import { discover } from '../../../src/here/discovery/discover.js';
import { inWords } from '../../../src/messages/say.js';
import { type Address, showAddress } from '../../../src/values/address.js';
import { sampleAnswer } from './sample-answer.js';

const LOOPBACK: Address = { kind: 'ipv4', bits: 0x7f00_0001 };
const OWN = [{ address: LOOPBACK, mask: { kind: 'mask', prefix: 8 } }] as const;
const GROUP = '239.255.255.250';

const open: Socket[] = [];
afterEach(() => {
  for (const socket of open.splice(0)) socket.close();
});

/** A camera on the loopback alone, written apart from what builds and reads the messages. */
async function camera(
  answersTo: (asked: string) => readonly (string | Uint8Array)[],
): Promise<readonly string[]> {
  const socket = createSocket({ type: 'udp4', reuseAddr: true });
  open.push(socket);
  await once(socket.bind(3702, GROUP), 'listening');
  socket.addMembership(GROUP, '127.0.0.1');
  const heard: string[] = [];
  socket.on('message', (bytes, { address, port }) => {
    const text = bytes.toString('utf8');
    heard.push(text);
    const asked = /MessageID>\s*([^<\s]+)\s*</.exec(text)?.[1] ?? '';
    const voice = createSocket('udp4');
    open.push(voice);
    voice.bind(0, '127.0.0.1', () => {
      for (const answer of answersTo(asked)) voice.send(answer, port, address);
    });
  });
  return heard;
}

/** Whether a multicast comes back on the loopback here; some systems have none. */
async function loopbackHasGroups(): Promise<boolean> {
  const [ear, mouth] = [createSocket({ type: 'udp4', reuseAddr: true }), createSocket('udp4')];
  try {
    await once(ear.bind(0, GROUP), 'listening');
    ear.addMembership(GROUP, '127.0.0.1');
    await once(mouth.bind(0, '127.0.0.1'), 'listening');
    mouth.setMulticastInterface('127.0.0.1');
    const heard = once(ear, 'message', { signal: AbortSignal.timeout(1000) });
    mouth.send('x', ear.address().port, GROUP);
    await heard;
    return true;
  } catch {
    return false;
  } finally {
    ear.close();
    mouth.close();
  }
}

const HAS_GROUPS = process.platform === 'linux' && (await loopbackHasGroups());

describe.skipIf(!HAS_GROUPS)(
  `over real UDP${HAS_GROUPS ? '' : ' (left out: no multicast on the loopback)'}`,
  () => {
    test('one probe is sent, and the camera that answers is found', async () => {
      const heard = await camera((asked) => [sampleAnswer({ relatesTo: asked })]);
      const { found, missed } = await discover({ local: LOOPBACK, own: OWN, milliseconds: 400 });
      expect(missed).toBeUndefined();
      expect(heard).toHaveLength(1);
      expect(
        found.map(({ names, addresses, from }) => [names, addresses.map(showAddress), showAddress(from)]),
      ).toEqual([[['North Gate'], ['172.23.40.57'], '127.0.0.1']]);
    });

    test('each search has an id of its own, and answers to another are dropped', async () => {
      const heard = await camera((asked) => [
        sampleAnswer({ relatesTo: 'urn:uuid:00000000-0000-4000-8000-000000000000' }),
        'junk',
        Uint8Array.from([0xff, 0xfe, 0x00]),
        sampleAnswer({ relatesTo: asked, before: '<!DOCTYPE x [<!ENTITY a "b">]>' }),
        sampleAnswer({ relatesTo: asked, matches: [{ endpoint: 'urn:uuid:right' }] }),
      ]);
      const found = async () => (await discover({ local: LOOPBACK, own: OWN, milliseconds: 400 })).found;
      expect((await found()).map(({ endpoint }) => endpoint)).toEqual(['urn:uuid:right']);
      expect((await found()).map(({ endpoint }) => endpoint)).toEqual(['urn:uuid:right']);
      expect(new Set(heard.map((text) => /urn:uuid:[0-9a-f-]{36}/.exec(text)?.[0])).size).toBe(2);
    });

    test('64 answers end the search before its time', async () => {
      await camera((asked) =>
        Array.from({ length: 70 }, (_, at) =>
          sampleAnswer({ relatesTo: asked, matches: [{ endpoint: `urn:uuid:${at}` }] }),
        ),
      );
      const begun = performance.now();
      const { found } = await discover({ local: LOOPBACK, own: OWN });
      expect(found).toHaveLength(64);
      expect(performance.now() - begun).toBeLessThan(3000);
    });

    test('where nobody answers the search ends after four seconds', async () => {
      const begun = performance.now();
      expect(await discover({ local: LOOPBACK, own: OWN })).toEqual({ found: [] });
      expect(performance.now() - begun).toBeGreaterThan(3900);
      expect(performance.now() - begun).toBeLessThan(5500);
    });
  },
);

test('an address that this computer does not have is said', async () => {
  const { found, missed } = await discover({
    local: { kind: 'ipv4', bits: 0xac17_28c8 },
    own: [],
    milliseconds: 400,
  });
  expect(found).toEqual([]);
  expect(missed && inWords(missed)).toBe(
    'The search for cameras could not be sent from 172.23.40.200. Check that this adapter is plugged in and has that address.',
  );
});
