import { describe, expect, test } from 'vitest';
import { type Adapter, NOTHING_SEEN } from '../../src/intake/seen.js';
import { chooseAdapter } from '../../src/intake/the-way-to-the-camera.js';
import { type Address, parseAddress } from '../../src/values/address.js';
import { parseMask } from '../../src/values/mask.js';

function address(text: string): Address {
  const parsed = parseAddress(text);
  if (!parsed.ok) throw new Error(text);
  return parsed.value;
}

/** An adapter of the computer: `172.23.40.12/24`, and what differs. */
function adapter(text: string, differs: Partial<Adapter> = {}): Adapter {
  const [own, prefix] = text.split('/');
  const mask = parseMask(prefix ?? '');
  const addresses =
    own === undefined || own === ''
      ? []
      : [{ address: address(own), ...(mask.ok ? { mask: mask.value } : {}), line: 1 }];
  return {
    name: '',
    owner: 'computer',
    kind: 'unknown',
    addresses,
    addresses6: [],
    gateways: [],
    gateways6: [],
    dns: [],
    dns6: [],
    ...differs,
  };
}

const GATEWAY: Partial<Adapter> = { gateways: [{ value: address('172.23.40.1'), line: 1 }] };

function choice(adapters: readonly Adapter[], camera?: string): string {
  const chosen = chooseAdapter(
    { ...NOTHING_SEEN, adapters },
    camera === undefined ? undefined : address(camera),
  );
  const passed = chosen.passedOver.map(({ index, why }) => `${index} ${why}`);
  return [`${chosen.adapter ?? 'none'}: ${chosen.why}`, ...passed].join(', ');
}

describe('the adapter that leads to the camera', () => {
  test('is the one in whose range the camera lies', () => {
    const two = [adapter('10.77.5.9/24', GATEWAY), adapter('172.23.40.12/24')];
    expect(choice(two, '172.23.40.57')).toBe('1: same-range, 0 other-range');
    expect(choice([...two].reverse(), '172.23.40.57')).toBe('0: same-range, 1 other-range');
  });

  test('lies in the range by its mask, not by its look', () => {
    const two = [adapter('172.23.40.12/25'), adapter('172.23.40.140/25')];
    expect(choice(two, '172.23.40.200')).toBe('1: same-range, 0 other-range');
    expect(choice([adapter('172.23.40.12/16'), adapter('10.77.5.9/24')], '172.23.99.7')).toBe(
      '0: same-range, 1 other-range',
    );
  });

  test('may have the range on its second address', () => {
    const [first, second] = [adapter('10.77.5.9/24'), adapter('172.23.40.12/24')];
    const both = { ...first, addresses: [...first.addresses, ...second.addresses] };
    expect(choice([adapter('172.28.9.4/24'), both], '172.23.40.57')).toBe('1: same-range, 0 other-range');
  });

  test('is the lead where Wi-Fi has the same range', () => {
    const two = [adapter('172.23.40.12/24', { kind: 'wifi' }), adapter('172.23.40.13/24', { kind: 'lead' })];
    expect(choice(two, '172.23.40.57')).toBe('1: same-range, 0 less-likely');
  });

  test('is not told where two leads have the same range', () => {
    const two = [adapter('172.23.40.12/24', { kind: 'lead' }), adapter('172.23.40.13/24', { kind: 'lead' })];
    expect(choice(two, '172.23.40.57')).toBe('none: several, 0 less-likely, 1 less-likely');
  });

  test('is the only one that is up', () => {
    const two = [adapter('172.23.40.12/24', { isUp: { value: false, line: 1 } }), adapter('10.77.5.9/24')];
    expect(choice(two)).toBe('1: only-one-up, 0 down');
    expect(choice([adapter(''), adapter('10.77.5.9/24')])).toBe('1: only-one-up, 0 no-address');
    expect(choice([adapter('0.0.0.0'), adapter('10.77.5.9')])).toBe('1: only-one-up, 0 no-address');
  });

  test('is the only one with a gateway, whatever it is called', () => {
    const two = [
      adapter('172.23.40.12/24', { kind: 'lead' }),
      adapter('10.77.5.9/24', { ...GATEWAY, kind: 'wifi' }),
    ];
    expect(choice(two)).toBe('1: has-gateway, 0 less-likely');
    expect(choice(two, '172.28.9.57')).toBe('1: has-gateway, 0 less-likely');
  });

  test('is the only lead where several have a gateway, or none has', () => {
    const kinds = (differs: Partial<Adapter>): readonly Adapter[] => [
      adapter('10.77.5.9/24', { ...differs, kind: 'wifi' }),
      adapter('172.23.40.12/24', { ...differs, kind: 'lead' }),
    ];
    expect(choice(kinds(GATEWAY))).toBe('1: named-lead, 0 less-likely');
    expect(choice(kinds({}))).toBe('1: named-lead, 0 less-likely');
  });

  test('is left open where nothing tells', () => {
    expect(choice([adapter('10.77.5.9/24'), adapter('172.23.40.12/24')])).toBe(
      'none: several, 0 less-likely, 1 less-likely',
    );
    expect(choice([])).toBe('none: none');
  });

  test.each(['vpn', 'virtual', 'loopback'] as const)(
    'is never a %s one, though it holds the camera',
    (kind) => {
      const bad = adapter('172.23.40.12/24', { ...GATEWAY, kind });
      expect(choice([bad, adapter('10.77.5.9/24')], '172.23.40.57')).toBe(`1: only-one-up, 0 ${kind}`);
      expect(choice([bad], '172.23.40.57')).toBe(`none: none, 0 ${kind}`);
      expect(choice([{ ...bad, isUp: { value: false, line: 2 } }])).toBe(`none: none, 0 ${kind}`);
    },
  );

  test('is one of the computer: a phone, a camera and what nobody knows are no choice', () => {
    const others = (['phone', 'camera', 'router', 'unknown'] as const).map((owner) =>
      adapter('172.23.40.12/24', { owner }),
    );
    expect(choice(others, '172.23.40.57')).toBe('none: none');
    expect(choice([...others, adapter('10.77.5.9/24')], '172.23.40.57')).toBe('4: only-one-up');
  });

  test.each(['/0', '/31', '/32', ''])('has no range to speak of with the mask %j', (mask) => {
    const two = [adapter(`172.23.40.56${mask}`), adapter('10.77.5.9/24')];
    expect(choice(two, '172.23.40.57')).toBe('none: several, 0 less-likely, 1 less-likely');
  });
});
