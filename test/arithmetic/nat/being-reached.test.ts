import { describe, expect, test } from 'vitest';
import { forwardStanding, ruleTarget } from '../../../src/arithmetic/nat/forward-standing.js';
import { hairpin } from '../../../src/arithmetic/nat/hairpin.js';
import { OUTBOUND_NEEDS, outboundNeeds } from '../../../src/arithmetic/nat/outbound-needs.js';
import { phoneReach } from '../../../src/arithmetic/nat/phone-network.js';
import { address, words } from '../given.js';
import { publishedRow } from '../network-references.js';

describe('a forwarded port', () => {
  test.each([
    ['direct', 'dont-know', 'fine', undefined],
    ['direct-unseen', 'dont-know', 'doubtful', 'seen'],
    ['translated', 'yes', 'doubtful', 'seen'],
    ['carrier', 'yes', 'impossible', undefined],
    ['both', 'yes', 'impossible', undefined],
    ['double', 'yes', 'fine', undefined],
    ['double', 'no', 'impossible', undefined],
    ['double', 'dont-know', 'doubtful', 'outer-passes'],
    ['another-router', 'yes', 'doubtful', 'outer'],
    ['another-router', 'no', 'impossible', undefined],
    ['no-address', 'yes', 'impossible', undefined],
    ['unknown', 'yes', 'doubtful', 'wan'],
  ] as const)('behind %s, outer passes on %s: %s', (standing, passes, verdict, decides) => {
    const { value } = forwardStanding(standing, passes);
    expect(value.verdict).toBe(verdict);
    expect(value.decides).toBe(decides);
  });

  test('that points at another address than the camera cannot work', () => {
    const there = ruleTarget(address('172.23.40.57'), address('172.23.40.58'));
    expect(there.value.verdict).toBe('impossible');
    expect(words(there.lines)[0]).toMatch(/172\.23\.40\.57.*172\.23\.40\.58/);
    expect(ruleTarget(address('172.23.40.57'), address('172.23.40.57')).value.verdict).toBe('fine');
    expect(ruleTarget(undefined, address('172.23.40.57')).value.decides).toBe('rule');
    expect(ruleTarget(address('172.23.40.57')).value.decides).toBe('camera');
  });
});

// RFC 4787, REQ-9.
describe('the outside address used on the site', () => {
  test('needs a router that turns traffic round', () => {
    expect(hairpin('inside', 'no').value.verdict).toBe('impossible');
    expect(hairpin('inside', 'yes').value.verdict).toBe('fine');
    expect(hairpin('inside', 'dont-know').value).toEqual({ verdict: 'doubtful', decides: 'turns-round' });
    expect(words(hairpin('inside', 'no').lines)[0]).toContain('REQ-9');
  });

  test('does not matter from elsewhere', () => {
    expect(hairpin('outside', 'no')).toEqual({ value: { verdict: 'fine' }, lines: [] });
  });
});

// RFC 6877, RFC 6147, RFC 6146.
describe('a phone in an IPv6-only network', () => {
  test.each([
    ['ipv4', 'numbers', 'no', 'fine', undefined],
    ['ipv6-only', 'name', 'no', 'fine', undefined],
    ['ipv6-only', 'numbers', 'yes', 'fine', undefined],
    ['ipv6-only', 'numbers', 'no', 'impossible', undefined],
    ['ipv6-only', 'numbers', 'dont-know', 'doubtful', 'phone-translates'],
    ['dont-know', 'numbers', 'no', 'doubtful', 'phone-network'],
    ['dont-know', 'numbers', 'yes', 'fine', undefined],
    ['dont-know', 'name', 'no', 'fine', undefined],
  ] as const)(
    'network %s, app calls by %s, phone translates %s: %s',
    (network, target, own, verdict, decides) => {
      const { value } = phoneReach(network, target, own);
      expect([value.verdict, value.decides]).toEqual([verdict, decides]);
    },
  );

  test('is shown what the address becomes there', () => {
    const { lines } = phoneReach('ipv6-only', 'numbers', 'no', address('192.0.2.33'));
    expect(words(lines).join(' ')).toContain('64:ff9b::c000:221');
  });
});

describe('the ways out that a service needs', () => {
  const open = { names: 'open', https: 'open', time: 'open', udp: 'open' } as const;

  test.each([
    [open, 'fine', undefined],
    [{ ...open, names: 'closed' }, 'impossible', undefined],
    [{ ...open, https: 'closed' }, 'impossible', undefined],
    [{ ...open, udp: 'closed' }, 'doubtful', undefined],
    [{ ...open, time: 'closed' }, 'doubtful', undefined],
    [{ ...open, udp: 'dont-know' }, 'doubtful', 'udp'],
    [{ ...open, udp: 'dont-know', https: 'closed' }, 'impossible', undefined],
  ] as const)('%o: %s', (states, verdict, decides) => {
    const { value } = outboundNeeds(states);
    expect([value.verdict, value.decides]).toEqual([verdict, decides]);
  });

  // IANA Service Name and Transport Protocol Port Number Registry.
  test('name the registered ports', () => {
    const port = (id: string): string => String(publishedRow<{ port: number }>(id).port);
    const ports = Object.fromEntries(OUTBOUND_NEEDS.map((need) => [need.way, need.ports]));
    expect(ports).toEqual({
      names: port('g-dns'),
      https: port('g-https'),
      time: port('g-ntp'),
      udp: `${port('g-stun')}, ${port('g-stuns')}`,
    });
    expect(port('g-turn')).toBe(port('g-stun'));
  });

  // RFC 4787, REQ-5; RFC 5382, REQ-5.
  test('name the published times after which a router may forget a session', () => {
    const udp = publishedRow<{ min_s: number }>('c-4787-req5').min_s / 60;
    const tcp = publishedRow<{ established_s: number }>('c-5382-tcp').established_s;
    const last = words(outboundNeeds(open).lines).at(-1);
    expect(last).toContain(`UDP session after ${udp} minutes`);
    expect(last).toContain(`${Math.floor(tcp / 3600)} h ${(tcp % 3600) / 60} min`);
  });
});
