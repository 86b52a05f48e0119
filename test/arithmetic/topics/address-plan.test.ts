import { describe, expect, test } from 'vitest';
import { ADDRESS_PLAN } from '../../../src/arithmetic/topics/address-plan.js';
import { refused, sumOf } from './given.js';

const SITE = {
  'router-address': '172.23.40.1',
  'router-mask': '255.255.255.0',
  'dhcp-first': '172.23.40.199',
  'dhcp-last': '172.23.40.100',
  known: '172.23.40.21, 172.23.40.250',
};

describe('an address plan, alone', () => {
  test('of eight cameras', () => {
    const { verdict, data, words } = sumOf(ADDRESS_PLAN, { ...SITE, cameras: '8' });
    expect(verdict).toBe('fine');
    expect(data).toEqual({
      cameras: [242, 243, 244, 245, 246, 247, 248, 249].map((host, at) => ({
        camera: `Camera ${at + 1}`,
        address: `172.23.40.${host}`,
      })),
      without: [],
      mask: '255.255.255.0',
      gateway: '172.23.40.1',
      firstDns: '172.23.40.1',
      room: 143,
      conflicts: 0,
    });
    expect(words).toContain('| Camera 8 | 172.23.40.249 | 255.255.255.0 | 172.23.40.1     |');
    expect(words.join('\n')).toMatch(/First DNS server for each: 172\.23\.40\.1.*Second:/);
  });

  test('names the smaller range where there is too little room', () => {
    const dhcp = { 'dhcp-first': '172.23.40.2', 'dhcp-last': '172.23.40.251' };
    const { verdict, words } = sumOf(ADDRESS_PLAN, { ...SITE, ...dhcp, known: '', cameras: '8' });
    expect(verdict).toBe('doubtful');
    expect(words).toContain('Cameras that get an address: 3. Without one: 5.');
    expect(words.join(' ')).toContain('hand out 172.23.40.2 to 172.23.40.246 only. That leaves 245');
  });

  test('is impossible where not one address is left', () => {
    const none = sumOf(ADDRESS_PLAN, { ...SITE, 'router-mask': '32', cameras: '1' });
    expect(none.verdict).toBe('impossible');
    expect(none.words.join(' ')).toContain('room for 0 in all');
  });

  test('keeps the address the cameras come with out of the plan', () => {
    const site = { ...SITE, cameras: '2', 'shared-address': '172.23.40.253' };
    const { data, words } = sumOf(ADDRESS_PLAN, site);
    expect(data.cameras).toEqual([
      { camera: 'Camera 1', address: '172.23.40.251' },
      { camera: 'Camera 2', address: '172.23.40.252' },
    ]);
    expect(words.join(' ')).toContain('All 2 new cameras come with 172.23.40.253.');
  });

  test.each([
    [{ cameras: '0' }, ['cameras', 'plan.cameras-wrong']],
    [{ cameras: '' }, ['cameras', 'amount.missing']],
    [{ cameras: '8', 'shared-address': '10.77.5' }, ['shared-address', 'typed.address-few']],
  ])('refuses %j', (given, problem) => {
    expect(refused(ADDRESS_PLAN, { ...SITE, ...given })).toEqual(problem);
  });
});
