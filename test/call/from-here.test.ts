import { expect, it } from 'vitest';
import { advance, type Call, openCall } from '../../src/call/call.js';
import { eventsFromHere } from '../../src/call/from-here.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { readPaste } from '../../src/intake/paste.js';
import { withTried } from '../../src/intake/with-tried.js';
import { address } from '../arithmetic/given.js';
import { AT, headerFor } from './play.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;
const camera = address('172.23.40.57');
const PINGED = withTried(readPaste('computer ip 172.23.40.5 mask 255.255.255.0'), {
  words: ['Ping 172.23.40.57: 0 of 3 came back'],
  pings: [
    {
      ...{ target: '172.23.40.57', address: camera, sent: 3, received: 0 },
      ...{ troubles: [], hasDuplicates: false, line: 1 },
    },
  ],
});

async function after(call: Call): Promise<Call> {
  let now = call;
  const { said, read } = eventsFromHere(now, PINGED, camera);
  for (const event of [...said, read]) {
    const next = await advance(now, { at: AT, ...event });
    if (!next.ok) throw new Error(next.problem.id);
    now = next.value;
  }
  return now;
}

it('the address that a person gave for the probes is said, and what was tried there is read', async () => {
  const call = await after(await openCall(rules, digest, headerFor('site', rules)));
  expect(call.state.answers.get('camera-address')).toMatchObject({
    value: { kind: 'address', address: camera },
    origin: 'said',
  });
  expect(call.state.answers.get('camera-ping')).toMatchObject({
    value: { kind: 'yes-no', yes: false },
    origin: 'read',
  });
});

it('an address that the call knows is not said again', async () => {
  const opened = await openCall(rules, digest, headerFor('site', rules));
  const next = await advance(opened, {
    ...{ at: AT, type: 'answered', question: 'camera-address', answer: '172.23.40.57', origin: 'agreed' },
  });
  if (!next.ok) throw new Error(next.problem.id);
  expect(eventsFromHere(next.value, PINGED, camera).said).toEqual([]);
  expect((await after(next.value)).state.answers.get('camera-address')).toMatchObject({ origin: 'agreed' });
});
