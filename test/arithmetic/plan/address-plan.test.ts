import fc from 'fast-check';
import ipaddr from 'ipaddr.js';
import { Netmask } from 'netmask';
import { describe, expect, it } from 'vitest';
import { addressPlan, type PlanSite } from '../../../src/arithmetic/plan/address-plan.js';
import { type Address, parseAddress, showAddress } from '../../../src/values/address.js';

const at = (text: string): Address => {
  const parsed = parseAddress(text);
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
};
const names = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, n) => `Camera ${n + 1}`);
const stretch = (from: string, to: string) => ({ from: at(from).bits, to: at(to).bits });
const SITE: PlanSite = {
  router: at('172.23.40.1'),
  mask: { kind: 'mask', prefix: 24 },
  dhcp: stretch('172.23.40.100', '172.23.40.199'),
  known: [at('172.23.40.21'), at('172.23.40.250')],
  cameras: names(8),
  defaultAddress: undefined,
};
const planned = (site: PlanSite): readonly string[] =>
  addressPlan(site).value.cameras.map(({ address }) => showAddress(address));
const ids = (site: PlanSite): readonly string[] => addressPlan(site).lines.map(({ id }) => id);

describe('an address plan for eight cameras', () => {
  it('gives one run, the highest that fits, out of the way of router, DHCP range and known devices', () => {
    expect(planned(SITE)).toEqual(
      [242, 243, 244, 245, 246, 247, 248, 249].map((host) => `172.23.40.${host}`),
    );
  });

  it('counts the room that is left: 254 hosts less 1 router, 100 handed out, 2 known, 8 cameras', () => {
    expect(addressPlan(SITE).value.room).toBe(254 - 1 - 100 - 2 - 8);
  });

  it('breaks the run only where none is long enough', () => {
    const known = Array.from({ length: 30 }, (_, n) => at(`172.23.40.${n * 8 + 8}`));
    const given = planned({ ...SITE, dhcp: undefined, known, cameras: names(9) });
    expect(new Set(given).size).toBe(9);
  });

  it.each([
    ['a device in the range handed out', { known: [at('172.23.40.150')] }, 'plan.in-dhcp'],
    ['two devices on one address', { known: [at('172.23.40.21'), at('172.23.40.21')] }, 'plan.twice'],
    ['a device on the address of the router', { known: [at('172.23.40.1')] }, 'plan.same-as-router'],
    ['a device outside', { known: [at('10.77.5.21')] }, 'plan.outside'],
    ['the broadcast address in use', { known: [at('172.23.40.255')] }, 'plan.no-host'],
    ['the network address in use', { known: [at('172.23.40.0')] }, 'plan.no-host'],
    [
      'a range that reaches past the network',
      { known: [], dhcp: stretch('172.23.40.200', '172.23.41.20') },
      'plan.dhcp-outside',
    ],
    [
      'a default address that a device here has',
      { defaultAddress: at('172.23.40.21') },
      'plan.default-taken',
    ],
    [
      'a default address that may be handed out',
      { defaultAddress: at('172.23.40.120') },
      'plan.default-taken',
    ],
    [
      'the router in the range it hands out',
      { dhcp: stretch('172.23.40.1', '172.23.40.20') },
      'plan.router-in-dhcp',
    ],
  ])('finds %s', (_, change, id) => {
    expect(ids({ ...SITE, ...change })).toContain(id);
    expect(addressPlan({ ...SITE, ...change }).value.conflicts).toBe(1);
  });

  it('keeps clear of the ends of the network where it can, and of the address the cameras come with', () => {
    const open = { ...SITE, known: [at('172.23.40.21')] };
    expect(planned(open).at(-1)).toBe('172.23.40.253');
    const given = planned({ ...open, defaultAddress: at('172.23.40.248') });
    expect(given).toEqual([240, 241, 242, 243, 244, 245, 246, 247].map((host) => `172.23.40.${host}`));
  });

  it('gives the computer none of the planned addresses meanwhile', () => {
    const open = { ...SITE, known: [], defaultAddress: at('172.23.40.253') };
    const set = addressPlan(open).lines.find(({ id }) => id === 'proposal.temporary-set');
    expect(planned(open)[0]).toBe('172.23.40.245');
    expect(set?.with?.address).toBe('172.23.40.244');
  });

  it.each([
    ['172.23.40.0', 'subnet.is-network-address'],
    ['172.23.40.255', 'subnet.is-broadcast-address'],
    ['0.0.0.0', 'subnet.address-blank'],
  ])('plans nothing behind a router at %s', (router, id) => {
    expect(planned({ ...SITE, router: at(router) })).toEqual([]);
    expect(ids({ ...SITE, router: at(router) })).toContain(id);
  });

  it('says how many fit and what would make room where there is too little', () => {
    const tight = { ...SITE, dhcp: stretch('172.23.40.2', '172.23.40.251') };
    const { value, lines } = addressPlan(tight);
    expect(value.cameras.map(({ address }) => showAddress(address))).toEqual(
      [252, 253, 254].map((host) => `172.23.40.${host}`),
    );
    expect(value.without).toEqual(['Camera 4', 'Camera 5', 'Camera 6', 'Camera 7', 'Camera 8']);
    expect(lines.find(({ id }) => id === 'plan.too-few')?.with).toEqual({ fits: 3, missing: 5 });
  });

  it.each([
    [29, '172.23.40.1', [2, 3, 4, 5, 6]],
    [30, '172.23.40.1', [2]],
    [30, '172.23.40.2', [1]],
    [31, '172.23.40.0', [1]],
    [31, '172.23.40.1', [0]],
    [32, '172.23.40.1', []],
  ])('uses every host of a /%i behind %s, both addresses of a /31 (RFC 3021)', (prefix, router, hosts) => {
    const tiny = { ...SITE, router: at(router), dhcp: undefined, known: [] };
    const given = planned({ ...tiny, mask: { kind: 'mask', prefix } });
    expect(given).toEqual(hosts.map((host) => `172.23.40.${host}`));
  });
});

describe('any plan, against ipaddr.js and netmask', () => {
  const host = fc.integer({ min: 1, max: 0xfffe });
  const site = fc.record({
    prefix: fc.integer({ min: 20, max: 29 }),
    router: host,
    dhcp: fc.option(fc.tuple(host, host), { nil: undefined }),
    known: fc.array(host, { maxLength: 12 }),
    count: fc.integer({ min: 1, max: 20 }),
  });

  it('gives each camera an address of its own that nobody else has, and counts what is left', () => {
    fc.assert(
      fc.property(site, ({ prefix, router, dhcp, known, count }) => {
        const block = new Netmask(`10.77.0.0/${prefix}`);
        const inside = (n: number): Address =>
          at(
            ipaddr.IPv4.parse('10.77.0.0')
              .octets.slice(0, 2)
              .join('.')
              .concat(`.${(n % block.size) >> 8}.${(n % block.size) & 255}`),
          );
        const own = inside(1 + (router % (block.size - 2)));
        const range = dhcp && {
          from: inside(Math.min(...dhcp.map((n) => n % block.size))).bits,
          to: inside(Math.max(...dhcp.map((n) => n % block.size))).bits,
        };
        const devices = known.map(inside);
        const mask = { kind: 'mask', prefix } as const;
        const { value } = addressPlan({
          router: own,
          mask,
          dhcp: range,
          known: devices,
          cameras: names(count),
          defaultAddress: undefined,
        });
        const given = value.cameras.map(({ address }) => address.bits);
        expect(new Set(given).size).toBe(given.length);
        const taken = new Set([own.bits, ...devices.map(({ bits }) => bits)]);
        for (const { address } of value.cameras) {
          const text = showAddress(address);
          expect(ipaddr.parse(text).match(ipaddr.parseCIDR(`10.77.0.0/${prefix}`))).toBe(true);
          expect([block.base, block.broadcast]).not.toContain(text);
          expect(taken.has(address.bits)).toBe(false);
          if (range) expect(address.bits < range.from || address.bits > range.to).toBe(true);
        }
        const handedOut = range
          ? Math.min(range.to, own.bits - (own.bits % block.size) + block.size - 2) -
            Math.max(range.from, own.bits - (own.bits % block.size) + 1) +
            1
          : 0;
        const isHost = (bits: number) => bits % block.size !== 0 && bits % block.size !== block.size - 1;
        const usedOutside = [...taken].filter(
          (bits) => isHost(bits) && !(range && range.from <= bits && bits <= range.to),
        ).length;
        expect(value.room + given.length + Math.max(0, handedOut) + usedOutside).toBe(block.size - 2);
        let hosts = 0;
        block.forEach((text) => {
          const { bits } = at(text);
          const isHandedOut = range !== undefined && range.from <= bits && bits <= range.to;
          if (!taken.has(bits) && !isHandedOut) hosts += 1;
        });
        expect(value.room + given.length).toBe(hosts);
        expect(given.length).toBe(Math.min(count, hosts));
      }),
      { numRuns: 120 },
    );
  });
});
