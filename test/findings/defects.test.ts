import { describe, expect, test } from 'vitest';
import type { Answers, Origin } from '../../src/answers/answer.js';
import { type Defect, defectsOf } from '../../src/findings/defects.js';
import { settle } from '../../src/findings/settle.js';
import { inWords } from '../../src/messages/say.js';
import type { Finding } from '../../src/rulebase/records.js';
import { finding, is, question, ruleBase } from '../ranking/literals.js';
import { answered } from './given.js';

const gateway: Finding = {
  ...finding('gateway', 'camera-gateway', { inside: 0.97, outside: 0.03 }),
  values: {
    inside: { title: 'Inside', usual: 0.97 },
    outside: {
      title: 'Outside',
      usual: 0.03,
      defect: { says: 'The gateway {camera-gateway} is outside.', cause: 'wrong-gateway' },
    },
  },
  asks: ['camera-address', 'camera-mask', 'camera-gateway', 'router-address'],
  rules: [
    { value: 'inside', conditions: { all: [is('gateway-standing', 'inside')] } },
    { value: 'outside', conditions: { all: [is('gateway-standing', 'outside')] } },
    { value: 'outside', conditions: { all: [is('gateway-is-router', 'another')] } },
  ],
};
const rules = ruleBase({
  questions: [
    question('camera-address', { answer: { type: 'address' } }),
    question('camera-gateway', { answer: { type: 'address' } }),
    question('camera-mask', { answer: { type: 'mask' } }),
    question('router-address', { answer: { type: 'address' } }),
  ],
  findings: [gateway, finding('plain', 'camera-address', { one: 0.5, other: 0.5 })],
  facts: [
    {
      id: 'gateway-standing',
      title: 'Gateway',
      source: { title: 'RFC 1122', section: '3.3.1.1' },
      type: 'choice',
      sum: 'gateway-standing',
      inputs: ['camera-address', 'camera-mask', 'camera-gateway'],
    },
    {
      id: 'gateway-is-router',
      title: 'Router',
      source: 'judged',
      type: 'choice',
      sum: 'gateway-is-router',
      inputs: ['camera-gateway', 'router-address'],
    },
  ],
});
const OUTSIDE = {
  'camera-address': '172.23.40.57',
  'camera-mask': '255.255.255.0',
  'camera-gateway': '172.23.41.1',
};

function withOrigins(raw: Readonly<Record<string, string>>, ...origins: readonly Origin[]): Answers {
  const answers = [...answered(rules, raw)];
  return new Map(answers.map(([id, answer], i) => [id, { ...answer, origin: origins[i] ?? 'said' }]));
}

async function defects(answers: Answers): Promise<readonly Defect[]> {
  return defectsOf(rules, answers, await settle(rules, answers));
}

describe('a defect', () => {
  test('follows from the numbers given while one of them was only said, and names those', async () => {
    const [one] = await defects(withOrigins(OUTSIDE, 'agreed', 'said', 'pasted'));
    expect(one).toMatchObject({
      finding: 'gateway',
      value: 'outside',
      says: 'The gateway {camera-gateway} is outside.',
      cause: 'wrong-gateway',
      grade: 'follows',
      unconfirmed: ['camera-mask'],
    });
  });

  test('is proven once every number is read back, pasted or read from the computer', async () => {
    const [one] = await defects(withOrigins(OUTSIDE, 'agreed', 'read', 'pasted'));
    expect(one).toMatchObject({ grade: 'proven', unconfirmed: [] });
  });

  test('brings the sum written out, and only of what shows it', async () => {
    const inside = { ...OUTSIDE, 'camera-gateway': '172.23.40.1', 'router-address': '172.23.40.254' };
    const lines = async (raw: Readonly<Record<string, string>>): Promise<string> =>
      (await defects(withOrigins(raw)))[0]?.lines.map(inWords).join(' ') ?? '';
    expect(await lines(OUTSIDE)).toContain('172.23.40.0');
    // Two rules set the value; the sum of the gateway and the router shows no fault here.
    const same = await lines({ ...OUTSIDE, 'router-address': '172.23.41.1' });
    expect(same).toBe(await lines(OUTSIDE));
    expect(await defects(withOrigins({ ...inside, 'router-address': '172.23.40.1' }))).toEqual([]);
  });

  test('is none while the finding is not known, or shows another value, or is no defect', async () => {
    expect(await defects(withOrigins({ 'camera-address': '172.23.40.57' }))).toEqual([]);
    expect(await defects(withOrigins({ ...OUTSIDE, 'camera-gateway': '172.23.40.1' }))).toEqual([]);
  });
});
