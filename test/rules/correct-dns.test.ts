import { expect, it } from 'vitest';
import { advance, openCall } from '../../src/call/call.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { holds } from '../../src/findings/holds.js';
import { AT, headerFor } from '../call/play.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;

it.each([
  ['a device on the site', '172.23.40.253', true],
  ['a private address of another network', '10.77.5.1', true],
  ['a public one', '203.0.113.53', true],
  ['empty', '0.0.0.0', true],
  ['the router itself', '172.23.40.1', false],
])('another name server may be put in where the camera has %s', async (_, dns, isOffered) => {
  let call = await openCall(rules, digest, headerFor('site', rules));
  for (const [question, answer] of [
    ['camera-address', '172.23.40.21'],
    ['camera-mask', '255.255.255.0'],
    ['router-address', '172.23.40.1'],
    ['camera-dns', dns],
  ] as const) {
    const next = await advance(call, { at: AT, type: 'answered', question, answer, origin: 'read' });
    if (!next.ok) throw new Error(next.problem.id);
    call = next.value;
  }
  const when = rules.remedies.find(({ id }) => id === 'correct-dns')?.when;
  expect(when && holds(when, call.assessed.settled.facts)).toBe(isOffered);
});
