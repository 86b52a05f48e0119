import { describe, expect, test } from 'vitest';
import { nextStep } from '../../src/steps/next-step.js';
import { repairOrder, visitOrder } from '../../src/steps/orders.js';
import { passKey } from '../../src/steps/situation.js';
import { cause, is, question, remedy, ruleBase } from '../ranking/literals.js';
import { situationAfter } from './situations.js';

const NAMES = ['account', 'lead', 'mount', 'plug', 'port', 'seal', 'socket', 'switch'];
const rules = ruleBase({
  questions: [question('agreed')],
  causes: NAMES.map((id, i) => cause(id, { prior: 20 - i })),
  remedies: NAMES.map((id) =>
    remedy(id, {
      place: id === 'mount' || id === 'seal' ? 'camera' : id === 'account' ? 'anywhere' : 'cabinet',
      ...(id === 'lead' ? { needs: ['patch-lead'] } : {}),
      ...(id === 'mount' ? { who: 'installer' as const } : {}),
    }),
  ),
});

describe('what to try now', () => {
  test('is what can be done here, nearest and likeliest first, with the minutes of the plan', async () => {
    const situation = await situationAfter(rules);
    const { remedies, minutes } = repairOrder(situation);
    const ids = remedies.map(({ id }) => id);
    expect(ids).not.toContain('mount');
    expect(ids).not.toContain('lead');
    expect(ids[0]).toBe('account');
    expect(ids.at(-1)).toBe('seal');
    const step = nextStep(situation);
    expect(step).toEqual({ kind: 'try', remedy: 'account', plan: ids, minutes });
  });
});

describe('what to do on a visit', () => {
  test('takes in other hands, kit and what was passed over, and no more than six', async () => {
    const over = { passed: new Set([passKey('try', 'plug')]), here: 'camera' };
    const ids = visitOrder(await situationAfter(rules, {}, over)).map(({ id }) => id);
    expect(ids.length).toBe(6);
    expect(ids).toContain('lead');
    expect(ids).toContain('plug');
    // The technician starts at the cabinet, wherever the caller stands.
    expect(ids.slice(0, 5)).not.toContain('mount');
  });

  test('leaves nothing out because it takes longer than a second visit', async () => {
    const long = { ...rules, remedies: rules.remedies.map((one) => ({ ...one, minutes: 5000 })) };
    expect(visitOrder(await situationAfter(long)).length).toBe(6);
  });

  test('leaves out what was tried and what a gate shuts', async () => {
    const gated = {
      ...rules,
      remedies: rules.remedies.map((one) =>
        one.id === 'port' ? { ...one, gate: { condition: is('agreed', true), why: 'Ask.' } } : one,
      ),
    };
    const situation = await situationAfter(gated, { agreed: false }, { tried: new Set(['plug']) });
    const ids = visitOrder(situation).map(({ id }) => id);
    expect(ids).not.toContain('plug');
    expect(ids).not.toContain('port');
    expect(ids).toContain('mount');
  });
});
