import { describe, expect, test } from 'vitest';
import { BANDWIDTH } from '../../../src/arithmetic/topics/bandwidth.js';
import { CLOCK } from '../../../src/arithmetic/topics/clock.js';
import { LOSS } from '../../../src/arithmetic/topics/loss.js';
import { NAT } from '../../../src/arithmetic/topics/nat.js';
import { STORAGE } from '../../../src/arithmetic/topics/storage.js';
import { say } from '../../../src/messages/say.js';
import { reckoned, refused, said } from './reckoned.js';

const TOPICS = [NAT, BANDWIDTH, STORAGE, LOSS, CLOCK];

/** The least that each topic can be asked with. */
const LEAST = new Map([
  [NAT, { way: 'forward', wan: '203.0.113.7' }],
  [BANDWIDTH, { upload: '10 Mbit/s' }],
  [STORAGE, { main: '4 Mbit/s', capacity: '128 GB' }],
  [LOSS, { sent: '100', received: '97' }],
  [CLOCK, { camera: '2026-11-25 14:31', truth: '2026-11-25 14:30' }],
]);

describe.each(TOPICS.map((topic) => [topic.id, topic] as const))('the sum %s', (_, topic) => {
  test('asks for every input in words of its own, each id once', () => {
    const ids = topic.inputs.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { ask, choices = [] } of topic.inputs) {
      expect(say(ask)).not.toBe('');
      for (const { title } of choices) expect(say(title)).not.toBe('');
    }
  });

  test('can be done with the inputs that must be given', () => {
    const least = LEAST.get(topic) ?? {};
    const needed = topic.inputs.filter(({ optional }) => optional !== true).map(({ id }) => id);
    expect(Object.keys(least).sort()).toEqual(needed.sort());
    expect(said(reckoned(topic, least))).not.toBe('');
  });

  test('refuses, with the input, when one that is needed is missing or empty', () => {
    const least: Readonly<Record<string, string>> = LEAST.get(topic) ?? {};
    for (const id of Object.keys(least)) {
      const { [id]: _left, ...rest } = least;
      expect(refused(topic, rest)[0]).toBe(id);
      expect(refused(topic, { ...least, [id]: ' ' })[0]).toBe(id);
    }
  });

  test('refuses nonsense in every input, naming it', () => {
    for (const { id } of topic.inputs) {
      expect(refused(topic, { ...LEAST.get(topic), [id]: 'nonsense' })[0]).toBe(id);
    }
  });

  test('takes every answer of every choice', () => {
    for (const { id, choices = [] } of topic.inputs) {
      for (const choice of choices) {
        expect(topic.reckon({ ...LEAST.get(topic), [id]: choice.id }).ok).toBe(true);
      }
    }
  });

  test('names one of its inputs wherever one would decide', () => {
    const { verdict, decides } = reckoned(topic, LEAST.get(topic) ?? {});
    if (decides === undefined) return;
    expect(verdict).toBe('doubtful');
    expect(topic.inputs.map(({ id }) => id)).toContain(decides);
  });

  test('gives plain data', () => {
    const { data } = reckoned(topic, LEAST.get(topic) ?? {});
    expect(JSON.parse(JSON.stringify(data))).toEqual(data);
  });
});

describe('being reached', () => {
  test('through a forwarded port behind a provider is impossible, through a service it is not', () => {
    const wan = '100.64.3.2';
    const open = { names: 'open', https: 'open', time: 'open', udp: 'open' };
    expect(reckoned(NAT, { way: 'forward', wan }).verdict).toBe('impossible');
    expect(reckoned(NAT, { way: 'service', wan, ...open }).verdict).toBe('fine');
    expect(reckoned(NAT, { way: 'service', wan: '0.0.0.0', ...open }).verdict).toBe('impossible');
  });

  test('needs everything: address, rule, and a network on the phone that carries it', () => {
    const good = {
      way: 'forward',
      wan: '203.0.113.7',
      seen: '203.0.113.7',
      rule: '172.23.40.57',
      camera: '172.23.40.57',
    };
    expect(reckoned(NAT, good).verdict).toBe('fine');
    expect(reckoned(NAT, { ...good, camera: '172.23.40.58' }).verdict).toBe('impossible');
    expect(reckoned(NAT, { ...good, seen: "don't know" }).decides).toBe('seen');
    expect(reckoned(NAT, { ...good, viewer: 'inside' }).decides).toBe('turns-round');
    expect(reckoned(NAT, { ...good, 'phone-network': 'ipv6-only', target: 'numbers' }).decides).toBe(
      'phone-translates',
    );
  });

  test('the phone network plays no part on the site', () => {
    const inside = { way: 'forward', wan: '203.0.113.7', viewer: 'inside', target: 'numbers' };
    expect(said(reckoned(NAT, inside))).not.toMatch(/IPv6|phone/);
  });

  test('an address that nobody outside can see is refused as seen from outside', () => {
    const [input, words] = refused(NAT, { way: 'forward', wan: '10.77.5.2', seen: '172.23.40.1' });
    expect(input).toBe('seen');
    expect(words).toContain('172.23.40.1');
  });
});

describe('bandwidth', () => {
  test('advises the sub stream where only that fits', () => {
    const given = { upload: '2-4 Mbit/s', main: '4 Mbps', sub: '512 kbps', viewers: '2' };
    expect(reckoned(BANDWIDTH, given)).toMatchObject({
      verdict: 'impossible',
      data: { streamThatFits: 'sub' },
    });
    expect(reckoned(BANDWIDTH, { ...given, stream: 'sub' }).verdict).toBe('fine');
    expect(reckoned(BANDWIDTH, { ...given, upload: '0.5 Mbit/s' }).data).toMatchObject({
      streamThatFits: 'neither',
    });
  });

  test('takes what cameras usually send where nobody knows, says so, and asks for it', () => {
    const open = reckoned(BANDWIDTH, { upload: '10 Mbit/s', main: '?' });
    expect(open).toMatchObject({ verdict: 'doubtful', decides: 'main' });
    expect(said(open)).toContain('not known');
  });

  test('heeds the download of the phone where it is given', () => {
    const given = { upload: '100 Mbit/s', main: '4 Mbit/s' };
    expect(reckoned(BANDWIDTH, given).verdict).toBe('fine');
    expect(reckoned(BANDWIDTH, { ...given, download: '3 Mbit/s' }).verdict).toBe('impossible');
    expect(reckoned(BANDWIDTH, { ...given, download: '3-30 Mbit/s' }).decides).toBe('download');
  });

  test('refuses a stream of no bits', () => {
    expect(refused(BANDWIDTH, { upload: '0' })[0]).toBe('upload');
  });
});

describe('storage', () => {
  const given = { main: '4 Mbit/s', capacity: '128 GB' };

  test('judges nothing where no question was put', () => {
    expect(reckoned(STORAGE, given).verdict).toBeUndefined();
  });

  test('judges the days wanted and the date missed', () => {
    expect(reckoned(STORAGE, { ...given, days: '2' }).verdict).toBe('fine');
    expect(reckoned(STORAGE, { ...given, days: '14' }).verdict).toBe('impossible');
    const gone = { ...given, date: '2026-11-20', today: '2026-11-25 14:30' };
    expect(reckoned(STORAGE, gone).data).toMatchObject({ dateIs: 'written-over' });
    expect(refused(STORAGE, { ...given, date: '2026-11-20' })[0]).toBe('today');
  });

  test('takes what is not known as a range and names what would decide', () => {
    expect(reckoned(STORAGE, { ...given, main: "don't know", days: '3' })).toMatchObject({
      verdict: 'doubtful',
      decides: 'main',
    });
  });

  test('shows binary gibibytes beside decimal gigabytes', () => {
    expect(said(reckoned(STORAGE, { ...given, capacity: '128GiB' }))).toMatch(/137\.4 GB.*128 GiB/);
  });
});

describe('loss', () => {
  test('refuses numbers that cannot all be right, naming the one to look at', () => {
    const given = { sent: '100', received: '95' };
    expect(refused(LOSS, { ...given, received: '101' })[0]).toBe('received');
    expect(refused(LOSS, { ...given, runs: '1, 1' })[0]).toBe('runs');
    expect(refused(LOSS, { ...given, shortest: '9', mean: '5' })[0]).toBe('mean');
    expect(refused(LOSS, { ...given, shortest: '9', longest: '5' })[0]).toBe('mean');
    expect(reckoned(LOSS, { ...given, runs: '1, 1 3' }).data).toHaveProperty('explanations');
  });

  test('says nothing of a stream where nothing came back', () => {
    const { data, lines } = reckoned(LOSS, { sent: '4', received: '0', mean: '4' });
    expect(Object.keys(data)).toEqual(['lossShare']);
    expect(lines).toHaveLength(1);
  });
});

describe('clock', () => {
  const given = {
    truth: '2026-11-25 14:30:00',
    zone: '+01:00',
    from: 'Nov 25 13:00:00 2026 GMT',
    until: 'Nov 25 13:00:00 2027 GMT',
  };

  test.each([
    ['2026-11-25 14:30:10', 'fine', 'Neither the clock'],
    ['2026-11-25 13:30:00', 'impossible', 'It is the clock'],
    ['2030-01-01 00:00:00', 'impossible', 'It is the clock'],
  ])('a camera at %s: %s', (camera, verdict, words) => {
    const sum = reckoned(CLOCK, { ...given, camera });
    expect(sum.verdict).toBe(verdict);
    expect(said(sum)).toContain(words);
  });

  test('an expired certificate is told from a wrong clock, and a wrong clock that hides it', () => {
    const old = { ...given, from: '2025-01-01', until: '2026-01-01' };
    expect(said(reckoned(CLOCK, { ...old, camera: given.truth }))).toContain('certificate itself');
    expect(said(reckoned(CLOCK, { ...old, camera: '2025-06-01 14:30:00' }))).toContain('hides it');
  });

  test('asks for the zone where the certificate hangs on it', () => {
    const { zone: _zone, ...unzoned } = given;
    const sum = reckoned(CLOCK, { ...unzoned, camera: given.truth });
    expect(sum).toMatchObject({ verdict: 'doubtful', decides: 'zone' });
  });

  test('takes the dates of a certificate for UTC where they name no zone', () => {
    const bare = { ...given, from: '2026-11-25 13:00:00', until: '2027-11-25 13:00:00' };
    expect(reckoned(CLOCK, { ...bare, camera: given.truth }).verdict).toBe('fine');
  });

  test('asks for the time that was read less exactly', () => {
    const camera = '2026-11-25 14:35:00';
    expect(reckoned(CLOCK, { camera, truth: '2026-11-25 14:30' }).decides).toBe('truth');
  });

  test('refuses a certificate that ends before it begins', () => {
    const wrong = { ...given, camera: given.truth, until: '2020-01-01' };
    expect(refused(CLOCK, wrong)[0]).toBe('until');
  });
});
