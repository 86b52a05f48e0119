import { describe, expect, it } from 'vitest';
import { orderLines } from '../../../src/arithmetic/plan/order.js';
import type { Address } from '../../../src/values/address.js';

const at = (host: number): Address => ({ kind: 'ipv4', bits: 0x0a4d0500 + host });
const ids = (...given: Parameters<typeof orderLines>): readonly string[] =>
  orderLines(...given).map(({ id }) => id);
const computer = (...given: Parameters<typeof orderLines>): unknown =>
  orderLines(...given).find(({ id }) => id === 'proposal.temporary-set')?.with?.address;

describe('the order of setting cameras that come with one address', () => {
  it('warns, then one at a time: set, test, next; then puts the computer back', () => {
    const order = ids(at(64), 8, [], undefined);
    const steps = [
      'plan.default-shared',
      'proposal.temporary-no-internet',
      'plan.one-at-a-time',
      'proposal.temporary-note-old',
      'proposal.temporary-set',
      'plan.set',
      'plan.test',
      'plan.next',
      'plan.next-silent',
      'proposal.temporary-put-back',
      'proposal.temporary-check',
    ];
    expect(order.filter((id) => steps.includes(id))).toEqual(steps);
  });

  it('has no next one where there is one camera', () => {
    const order = ids(at(64), 1, [], undefined);
    expect(order).toContain('plan.default-one');
    expect(order.filter((id) => /next|one-at-a-time|shared/.test(id))).toEqual([]);
  });

  it('keeps the computer off devices, planned addresses and the range handed out', () => {
    expect(computer(at(64), 2, [], undefined)).toBe('10.77.5.65');
    expect(computer(at(64), 2, [at(65)], undefined)).toBe('10.77.5.63');
    const dhcp = { from: at(40).bits, to: at(90).bits };
    expect(computer(at(64), 2, [at(39)], dhcp)).toBe('10.77.5.38');
    const wide = { from: 0x0a000000, to: at(90).bits };
    expect(computer(at(64), 2, [], wide)).toBe('10.77.5.91');
  });
});
