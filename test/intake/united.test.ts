import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Adapter, NOTHING_SEEN, type Route } from '../../src/intake/seen.js';
import { united } from '../../src/intake/united.js';
import { showAddress } from '../../src/values/address.js';
import { showMask } from '../../src/values/mask.js';
import { adapter, addressAt, at, route } from './made.js';

const adaptersOf = (...adapters: readonly Adapter[]): readonly Adapter[] =>
  united({ ...NOTHING_SEEN, adapters }).adapters;
const routed = (routes: readonly Route[], ...adapters: readonly Adapter[]): readonly (readonly string[])[] =>
  united({ ...NOTHING_SEEN, adapters, routes }).adapters.map(({ gateways }) =>
    gateways.map(({ value, line }) => `${line}: ${showAddress(value)}`),
  );
const addressesOf = (one: Adapter | undefined): readonly string[] =>
  (one?.addresses ?? []).map(
    ({ address, mask, line }) => `${line}: ${showAddress(address)} ${mask ? showMask(mask) : 'no mask'}`,
  );

describe('adapters of one name', () => {
  test('are one adapter, with what each output says of it', () => {
    const [one, ...others] = adaptersOf(
      adapter('172.23.40.5/24', 3, { name: 'eth0', kind: 'lead' }),
      adapter('10.77.5.9/24', 8, { name: 'wlan0', kind: 'wifi' }),
      adapter('', 12, {
        name: 'eth0',
        gateways: [addressAt('172.23.40.1', 12)],
        dns: [addressAt('172.23.40.3', 13)],
        isByHand: at(true, 14),
      }),
    );
    expect(others.map(({ name }) => name)).toEqual(['wlan0']);
    expect(one).toEqual(
      adapter('172.23.40.5/24', 3, {
        name: 'eth0',
        kind: 'lead',
        gateways: [addressAt('172.23.40.1', 12)],
        dns: [addressAt('172.23.40.3', 13)],
        isByHand: at(true, 14),
      }),
    );
  });

  test('keep what the first output says where the second says otherwise', () => {
    const [one] = adaptersOf(
      adapter('172.23.40.5/24', 1, { name: 'eth0', isByHand: at(false, 1), isUp: at(true, 1) }),
      adapter('172.23.40.6/24', 5, { name: 'eth0', isByHand: at(true, 5), isUp: at(false, 5) }),
    );
    expect(one).toMatchObject({ isByHand: { value: false }, isUp: { value: true } });
    expect(addressesOf(one)).toEqual(['1: 172.23.40.5 255.255.255.0', '5: 172.23.40.6 255.255.255.0']);
  });

  test('take their kind from whichever output knows it', () => {
    const known = adapter('172.23.40.5/24', 1, { name: 'eth0', kind: 'lead' });
    const unknown = adapter('172.23.40.5/24', 5, { name: 'eth0' });
    expect(adaptersOf(known, unknown)[0]?.kind).toBe('lead');
    expect(adaptersOf(unknown, known)[0]?.kind).toBe('lead');
  });

  test('say the same address, gateway and server once, by the first line', () => {
    const both = (line: number): Adapter =>
      adapter('172.23.40.5/24', line, {
        name: 'eth0',
        gateways: [addressAt('172.23.40.1', line + 1)],
        dns: [addressAt('172.23.40.1', line + 2)],
      });
    const [one, ...others] = adaptersOf(both(1), both(11));
    expect([one, ...others]).toEqual([both(1)]);
  });

  test('lose no mask to an output that leaves it out', () => {
    const [one] = adaptersOf(
      adapter('172.23.40.5', 1, { name: 'Ethernet' }),
      adapter('172.23.40.5/24', 9, { name: 'Ethernet' }),
    );
    expect(addressesOf(one)).toEqual(['9: 172.23.40.5 255.255.255.0']);
  });

  test('stay apart where they belong to different devices, and where they have no name', () => {
    const [phone, computer] = (['phone', 'computer'] as const).map((owner, index) =>
      adapter('172.23.40.5/24', index, { name: 'wlan0', owner }),
    );
    expect(adaptersOf(...[phone, computer].filter((one) => one !== undefined))).toHaveLength(2);
    expect(adaptersOf(adapter('172.23.40.5/24', 1), adapter('172.23.40.5/24', 2))).toHaveLength(2);
  });
});

describe('a default route', () => {
  const eth0 = adapter('172.23.40.5/24', 3, { name: 'eth0' });
  const wlan0 = adapter('10.77.5.9/24', 8, { name: 'wlan0' });

  test('gives its gateway to the adapter it names, and to no other', () => {
    expect(routed([route('0.0.0.0/0', '172.23.40.1', 'eth0', 12)], eth0, wlan0)).toEqual([
      ['12: 172.23.40.1'],
      [],
    ]);
  });

  test('gives it to the adapter whose address it names', () => {
    expect(routed([route('0.0.0.0/0', '10.77.5.1', '10.77.5.9', 12)], eth0, wlan0)).toEqual([
      [],
      ['12: 10.77.5.1'],
    ]);
  });

  test('adds nothing that the adapter knows already', () => {
    const known = { ...eth0, gateways: [addressAt('172.23.40.1', 4)] };
    expect(routed([route('0.0.0.0/0', '172.23.40.1', 'eth0', 12)], known)).toEqual([['4: 172.23.40.1']]);
  });

  test.each([
    ['of no adapter', route('0.0.0.0/0', '172.23.40.1', undefined, 12)],
    ['of an adapter that is not there', route('0.0.0.0/0', '172.23.40.1', 'eth1', 12)],
    ['to one network only', route('10.77.6.0/24', '172.23.40.1', 'eth0', 12)],
  ])('gives nothing where it is a route %s', (_, one) => {
    expect(routed([one], eth0, wlan0)).toEqual([[], []]);
  });

  test('gives nothing to what is no computer', () => {
    const camera = { ...eth0, owner: 'camera' as const };
    expect(routed([route('0.0.0.0/0', '172.23.40.1', 'eth0', 12)], camera)).toEqual([[]]);
  });
});

describe('name servers of the whole computer', () => {
  const dns = [addressAt('172.23.40.3', 20)];
  const open = adapter('172.23.40.5/24', 3, { name: 'eth0', gateways: [addressAt('172.23.40.1', 5)] });
  const closed = adapter('10.77.5.9/24', 8, { name: 'wlan0' });
  const serversOf = (...adapters: readonly Adapter[]): readonly number[] =>
    united({ ...NOTHING_SEEN, adapters, dns }).adapters.map((one) => one.dns.length);

  test('are those of the only adapter with a gateway', () => {
    expect(serversOf(open, closed)).toEqual([1, 0]);
    expect(serversOf({ ...open, dns }, closed)).toEqual([1, 0]);
  });

  test('are nobody’s where several have a gateway, or none, or only a phone', () => {
    expect(serversOf(open, { ...open, name: 'wlan0' })).toEqual([0, 0]);
    expect(serversOf(closed)).toEqual([0]);
    expect(serversOf({ ...open, owner: 'phone' })).toEqual([0]);
  });
});

const some = fc.record({
  name: fc.constantFrom('', 'eth0', 'wlan0'),
  own: fc.constantFrom('172.23.40.5', '172.23.40.6', '10.77.5.9'),
  prefix: fc.constantFrom('', '/24', '/16'),
  owner: fc.constantFrom('computer' as const, 'phone' as const),
  gateway: fc.option(fc.constantFrom('172.23.40.1', '10.77.5.1'), { nil: undefined }),
});
const adapters = fc.array(some, { maxLength: 6 }).map((all) =>
  all.map(({ name, own, prefix, owner, gateway }, line) =>
    adapter(`${own}${prefix}`, line + 1, {
      name,
      owner,
      gateways: gateway === undefined ? [] : [addressAt(gateway, line + 1)],
    }),
  ),
);
const names = (all: readonly Adapter[]): readonly string[] =>
  all.flatMap(({ name, owner }) => (name === '' ? [] : [`${owner} ${name}`]));
const facts = (all: readonly Adapter[]): ReadonlySet<string> =>
  new Set(
    all.flatMap(({ name, owner, addresses, gateways }) => [
      ...addresses.map(({ address }) => `${owner} ${name} is ${showAddress(address)}`),
      ...gateways.map(({ value }) => `${owner} ${name} by ${showAddress(value)}`),
    ]),
  );

test('every name stands once, and no address and no gateway is lost or made up', () => {
  fc.assert(
    fc.property(adapters, (all) => {
      const after = adaptersOf(...all);
      expect([...names(after)].sort()).toEqual([...new Set(names(all))].sort());
      expect(after.filter(({ name }) => name === '')).toHaveLength(
        all.filter(({ name }) => name === '').length,
      );
      expect(facts(after)).toEqual(facts(all));
      expect(adaptersOf(...after)).toEqual(after);
    }),
  );
});
