import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Observation, observationsIn, type Sight } from '../../src/intake/observations.js';
import { type Adapter, NOTHING_SEEN, type Seen } from '../../src/intake/seen.js';
import { showAddress } from '../../src/values/address.js';
import { showMask } from '../../src/values/mask.js';
import { address, bits, prefix } from '../arithmetic/given.js';
import { adapter, addressAt, at, ping } from './made.js';

const CAMERA = address('172.23.40.57');

function told(seen: Partial<Seen>, sight: Sight = {}): Readonly<Record<string, unknown>> {
  const all = observationsIn({ ...NOTHING_SEEN, ...seen }, sight);
  return Object.fromEntries(all.map(({ id, value }) => [id, value]));
}

const one = (seen: Partial<Seen>, id: string, sight: Sight = {}): Observation | undefined =>
  observationsIn({ ...NOTHING_SEEN, ...seen }, sight).find((found) => found.id === id);

const computer = (differs: Partial<Adapter> = {}): Adapter =>
  adapter('172.23.40.5/24', 3, {
    name: 'eth0',
    kind: 'lead',
    gateways: [addressAt('172.23.40.1', 4)],
    isByHand: at(false, 5),
    ...differs,
  });
const camera = (differs: Partial<Adapter> = {}): Adapter =>
  adapter('172.23.40.57/24', 13, {
    owner: 'camera',
    gateways: [addressAt('172.23.40.1', 14)],
    dns: [addressAt('172.23.40.3', 15)],
    isByHand: at(true, 12),
    ...differs,
  });

describe('a computer and a camera in one text', () => {
  test('tell everything that they show, each with its line', () => {
    const seen = { ...NOTHING_SEEN, adapters: [computer(), camera()] };
    expect(observationsIn(seen, { adapter: 0 })).toEqual([
      { id: 'computer.address', value: '172.23.40.5', line: 3 },
      { id: 'computer.mask', value: '255.255.255.0', line: 3 },
      { id: 'computer.by-hand', value: false, line: 5 },
      { id: 'computer.links', value: 'lead', line: 3 },
      { id: 'router.address', value: '172.23.40.1', line: 4 },
      { id: 'router.mask', value: '255.255.255.0', line: 3 },
      { id: 'camera.address', value: '172.23.40.57', line: 13 },
      { id: 'camera.mask', value: '255.255.255.0', line: 13 },
      { id: 'camera.gateway', value: '172.23.40.1', line: 14 },
      { id: 'camera.dns', value: '172.23.40.3', line: 15 },
      { id: 'camera.set-by', value: 'fixed', line: 12 },
      { id: 'camera.mask-same', value: true, line: 13 },
      { id: 'camera.gateway-same', value: true, line: 14 },
    ]);
  });

  test('tell where they differ', () => {
    const odd = camera({
      addresses: adapter('172.23.40.57/16', 13).addresses,
      gateways: [addressAt('172.23.41.1', 14)],
      isByHand: at(false, 12),
    });
    expect(told({ adapters: [computer(), odd] }, { adapter: 0 })).toMatchObject({
      'camera.mask': '255.255.0.0',
      'camera.mask-same': false,
      'camera.gateway-same': false,
      'camera.set-by': 'automatic',
    });
  });

  test('compare nothing while nobody knows which adapter is meant', () => {
    const found = told({ adapters: [computer(), camera()] });
    expect(Object.keys(found).filter((id) => id.endsWith('-same') || id.startsWith('router.'))).toEqual([]);
    expect(found).not.toHaveProperty('computer.address');
    expect(found).toHaveProperty('camera.address');
  });
});

describe('the router', () => {
  const router = adapter('172.23.40.254/23', 20, { owner: 'router' });

  test('is what its own page says, before what a computer takes for it', () => {
    expect(told({ adapters: [computer(), router] }, { adapter: 0 })).toMatchObject({
      'router.address': '172.23.40.254',
      'router.mask': '255.255.254.0',
    });
  });

  test.each<[string, Partial<Adapter>]>([
    ['was typed in', { isByHand: at(true, 5) }],
    ['lies out of its range', { gateways: [addressAt('172.23.99.1', 4)] }],
    ['is none', { gateways: [] }],
    ['has a range that nobody knows', { addresses: adapter('172.23.40.5', 3).addresses }],
  ])('is not told where the gateway of the computer %s', (_, differs) => {
    const found = told({ adapters: [computer(differs), camera()] }, { adapter: 0 });
    expect(found).not.toHaveProperty('router.address');
    expect(found).not.toHaveProperty('router.mask');
    expect(found).not.toHaveProperty('camera.gateway-same');
  });

  test('lends its mask only where the text says that it gave the address', () => {
    const { isByHand: _, ...unsaid } = computer();
    const found = told({ adapters: [unsaid] }, { adapter: 0 });
    expect(found).toHaveProperty('router.address', '172.23.40.1');
    expect(found).not.toHaveProperty('router.mask');
  });

  test('is not the only box where another one handed the address out; that it is, is never said', () => {
    const other = computer({ dhcpServer: addressAt('172.23.40.2', 6) });
    expect(one({ adapters: [other] }, 'site.second-router', { adapter: 0 })).toEqual({
      id: 'site.second-router',
      value: true,
      line: 6,
    });
    const same = computer({ dhcpServer: addressAt('172.23.40.1', 6) });
    expect(told({ adapters: [same] }, { adapter: 0 })).not.toHaveProperty('site.second-router');
  });
});

describe('how the computer hangs on the network', () => {
  const lo = adapter('127.0.0.1/8', 1, { kind: 'loopback' });
  const lead = adapter('172.23.40.5/24', 3, { kind: 'lead' });
  const wifi = adapter('172.23.40.6/24', 5, { kind: 'wifi' });
  const vpn = adapter('10.77.9.6/24', 7, { kind: 'vpn' });

  test.each<[string, number, readonly Adapter[]]>([
    ['lead', 3, [lo, lead]],
    ['wifi', 5, [lo, wifi]],
    ['both', 3, [lo, wifi, lead]],
    ['both', 2, [lo, lead, adapter('172.23.40.6/24', 2, { kind: 'wifi' })]],
    ['tunnel', 7, [lo, lead, wifi, vpn]],
    ['lead', 3, [{ ...wifi, isUp: at(false, 5) }, lead]],
    ['lead', 3, [adapter('', 5, { kind: 'wifi' }), lead]],
    ['lead', 3, [adapter('0.0.0.0', 5, { kind: 'wifi' }), lead]],
    ['wifi', 5, [{ ...vpn, isUp: at(false, 7) }, wifi]],
    ['lead', 3, [{ ...wifi, owner: 'phone' }, lead]],
  ])('is told as %s by line %i', (value, line, adapters) => {
    expect(one({ adapters }, 'computer.links')).toEqual({ id: 'computer.links', value, line });
  });

  test('is not told where no kind is known', () => {
    expect(one({ adapters: [lo, adapter('172.23.40.5/24', 3)] }, 'computer.links')).toBeUndefined();
  });
});

describe('a camera', () => {
  const other = camera({ addresses: adapter('172.23.40.58/24', 23).addresses });

  test('of several is the one whose address is known, else none', () => {
    const adapters = [camera(), other];
    expect(told({ adapters })).toEqual({});
    const sight = { camera: address('172.23.40.58') };
    expect(one({ adapters }, 'camera.address', sight)).toMatchObject({ value: '172.23.40.58', line: 23 });
    expect(told({ adapters }, { camera: address('172.23.40.59') })).toEqual({});
  });

  test('that is alone is taken, though another address was known', () => {
    expect(one({ adapters: [other] }, 'camera.address', { camera: CAMERA })?.value).toBe('172.23.40.58');
  });
});

describe('pings', () => {
  test('of the camera say whether it answers, by the last of them', () => {
    const pings = [
      ping('172.23.40.57', 4, 4, 1),
      ping('172.23.40.57', 4, 0, 9),
      ping('172.23.40.1', 4, 4, 15),
    ];
    expect(one({ pings }, 'camera.answers', { camera: CAMERA })).toEqual({
      id: 'camera.answers',
      value: false,
      line: 9,
    });
    expect(one({ pings: pings.slice(0, 1) }, 'camera.answers', { camera: CAMERA })?.value).toBe(true);
  });

  test('count for the camera of the same text', () => {
    const seen = { adapters: [camera()], pings: [ping('172.23.40.57', 4, 1, 20)] };
    expect(told(seen)).toMatchObject({ 'camera.answers': true });
  });

  test.each<[string, Partial<Seen>, Sight]>([
    ['of another device', { pings: [ping('172.23.40.1', 4, 4, 1)] }, { camera: CAMERA }],
    ['while nobody knows the camera', { pings: [ping('172.23.40.57', 4, 4, 1)] }, {}],
    ['that was cut before anything was sent', { pings: [ping('172.23.40.57', 0, 0, 1)] }, { camera: CAMERA }],
  ])('say nothing of it %s', (_, seen, sight) => {
    expect(told(seen, sight)).toEqual({});
  });

  test.each([
    [19, 10, undefined],
    [20, 20, 0],
    [20, 15, 25],
    [100, 67, 33],
    [20, 0, undefined],
    [20, 25, 0],
  ])('%i sent and %i come back are a loss of %s per cent', (sent, received, loss) => {
    const pings = [ping('172.23.40.57', sent, received, 1)];
    expect(told({ pings }, { camera: CAMERA })['camera.loss']).toBe(loss);
  });
});

describe('a phone', () => {
  const phone = (text: string): Adapter => adapter(text, 30, { owner: 'phone' });

  test.each([
    ['172.23.40.77', true],
    ['172.23.41.57', false],
    ['10.77.5.9', false],
  ])('at %s has the first three numbers of the camera: %s', (text, value) => {
    const found = { id: 'phone.same-range', value, line: 30 };
    expect(one({ adapters: [phone(text), camera()] }, 'phone.same-range')).toEqual(found);
    // The camera's address may be known from an answer.
    expect(one({ adapters: [phone(text)] }, 'phone.same-range', { camera: CAMERA })).toEqual(found);
  });

  test('alone says nothing', () => {
    expect(told({ adapters: [phone('172.23.40.77')] })).toEqual({});
  });
});

const number = fc.integer({ min: 1, max: 0xfffffffe });
const put = fc.record({
  own: number,
  ones: fc.integer({ min: 1, max: 30 }),
  gateway: fc.option(number, { nil: undefined }),
  isByHand: fc.option(fc.boolean(), { nil: undefined }),
  cam: number,
  camOnes: fc.integer({ min: 1, max: 30 }),
  camGateway: number,
  sent: fc.integer({ min: 0, max: 200 }),
  lost: fc.integer({ min: 0, max: 200 }),
});

test('observations agree with what was put in, and stand once each', () => {
  fc.assert(
    fc.property(put, ({ own, ones, gateway, isByHand, cam, camOnes, camGateway, sent, lost }) => {
      const received = Math.max(0, sent - lost);
      const base = adapter('', 0);
      const adapters: readonly Adapter[] = [
        {
          ...base,
          kind: 'lead',
          addresses: [{ address: bits(own), mask: prefix(ones), line: 1 }],
          gateways: gateway === undefined ? [] : [at(bits(gateway), 2)],
          ...(isByHand === undefined ? {} : { isByHand: at(isByHand, 3) }),
        },
        {
          ...base,
          owner: 'camera',
          addresses: [{ address: bits(cam), mask: prefix(camOnes), line: 4 }],
          gateways: [at(bits(camGateway), 5)],
        },
      ];
      const pings = [{ ...ping('172.23.40.57', sent, received, 6), address: bits(cam) }];
      const all = observationsIn({ ...NOTHING_SEEN, adapters, pings }, { adapter: 0 });
      expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
      const found = Object.fromEntries(all.map(({ id, value }) => [id, value]));
      const isRouter =
        gateway !== undefined &&
        isByHand !== true &&
        Math.floor(own / 2 ** (32 - ones)) === Math.floor(gateway / 2 ** (32 - ones));
      expect(found['computer.address']).toBe(showAddress(bits(own)));
      expect(found['computer.mask']).toBe(showMask(prefix(ones)));
      expect(found['computer.by-hand']).toBe(isByHand);
      expect(found['router.address']).toBe(isRouter ? showAddress(bits(gateway)) : undefined);
      expect(found['camera.address']).toBe(showAddress(bits(cam)));
      expect(found['camera.mask-same']).toBe(ones === camOnes);
      expect(found['camera.gateway-same']).toBe(isRouter ? gateway === camGateway : undefined);
      expect(found['camera.answers']).toBe(sent === 0 ? undefined : received > 0);
      const loss = found['camera.loss'];
      expect(loss !== undefined).toBe(sent >= 20 && received > 0);
      if (typeof loss === 'number')
        expect(Math.abs(loss - (100 * (sent - received)) / sent)).toBeLessThanOrEqual(0.5);
    }),
  );
});
