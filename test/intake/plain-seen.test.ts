import { expect, test } from 'vitest';
import { plain } from '../../src/intake/plain-seen.js';
import { NOTHING_SEEN } from '../../src/intake/seen.js';
import { parseAddress6 } from '../../src/values/address6.js';
import { adapter, addressAt, at, ping, route } from './made.js';

const six = parseAddress6('2001:db8::57');
if (!six.ok) throw new Error('no IPv6 address');

test('addresses and masks stand as they are written, everything else as it was', () => {
  const computer = adapter('172.23.40.5/23', 3, {
    name: 'eth0',
    kind: 'lead',
    addresses6: [at(six.value, 4)],
    gateways: [addressAt('172.23.40.1', 5)],
    isByHand: at(false, 6),
    unnamed: ['gateway'],
  });
  const found = plain({
    ...NOTHING_SEEN,
    adapters: [computer],
    routes: [route('0.0.0.0/0', '172.23.40.1', 'eth0', 7)],
    pings: [{ ...ping('172.23.40.57', 4, 3, 8), average: 1.5, troubles: [{ kind: 'timed-out', line: 9 }] }],
  });
  expect(found).toEqual({
    ...NOTHING_SEEN,
    adapters: [
      {
        name: 'eth0',
        owner: 'computer',
        kind: 'lead',
        addresses: [{ address: '172.23.40.5', mask: '255.255.254.0', line: 3 }],
        addresses6: [{ value: '2001:db8::57', line: 4 }],
        gateways: [{ value: '172.23.40.1', line: 5 }],
        gateways6: [],
        dns: [],
        dns6: [],
        isByHand: { value: false, line: 6 },
        unnamed: ['gateway'],
      },
    ],
    routes: [{ to: '0.0.0.0', mask: '0.0.0.0', via: '172.23.40.1', adapter: 'eth0', line: 7 }],
    pings: [
      {
        target: '172.23.40.57',
        address: '172.23.40.57',
        sent: 4,
        received: 3,
        average: 1.5,
        troubles: [{ kind: 'timed-out', line: 9 }],
        hasDuplicates: false,
        line: 8,
      },
    ],
  });
});

test('nothing of it is lost on the way through JSON', () => {
  const found = plain({ ...NOTHING_SEEN, adapters: [adapter('172.23.40.5', 1)] });
  expect(JSON.parse(JSON.stringify(found))).toEqual(found);
});
