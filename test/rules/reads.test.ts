import { describe, expect, it } from 'vitest';
import { parseAnswer } from '../../src/answers/parse-answer.js';
import { advance, openCall } from '../../src/call/call.js';
import { answersFrom, cameraOf, pasteEvent } from '../../src/call/from-paste.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { OBSERVATIONS } from '../../src/intake/observations.js';
import { readPaste } from '../../src/intake/paste.js';
import { AT, headerFor } from '../call/play.js';
import { lineWith, SITE } from '../intake/a-site.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;
const ABOUT = { isHere: true, adapter: 0 };

/** Read off `SITE` by eye: every answer with a part of its line that stands on no other. */
const BY_EYE: readonly (readonly [question: string, answer: string | boolean, part: string])[] = [
  ['computer-by-hand', false, 'DHCP Enabled'],
  ['computer-address', '172.23.40.5', 'IPv4 Address'],
  ['computer-connections', 'lead', 'IPv4 Address'],
  // The mask stands one line below, but goes with its address.
  ['computer-mask', '255.255.255.0', 'IPv4 Address'],
  ['router-mask', '255.255.255.0', 'IPv4 Address'],
  ['router-address', '172.23.40.1', 'Default Gateway'],
  ['second-router-there', true, 'DHCP Server'],
  ['camera-ping', true, 'Pinging'],
  ['address-set-by', 'fixed', 'Address type:'],
  ['camera-address', '172.23.40.57', 'IP address:'],
  ['camera-mask', '255.255.255.0', 'IP address:'],
  ['masks-compared', true, 'IP address:'],
  ['camera-gateway', '172.23.41.1', 'Default gateway:'],
  ['gateway-compared', false, 'Default gateway:'],
  ['camera-dns', '172.23.40.1', 'DNS server:'],
];

describe('one pasted text of ipconfig, arp, ping and the page of a camera', () => {
  const answers = answersFrom(rules, readPaste(SITE), ABOUT, undefined);

  it('answers at least eight questions, each as it is read by eye', () => {
    expect(answers.length).toBeGreaterThanOrEqual(8);
    expect(answers).toEqual(
      BY_EYE.map(([question, answer, part]) => ({ question, answer, line: lineWith(part) })),
    );
  });

  it('is taken by a call, which then asks none of them and finds the gateway outside', async () => {
    const start = await openCall(rules, digest, headerFor('desk', rules));
    const event = pasteEvent(start.state, readPaste(SITE), answers, ABOUT);
    const next = await advance(start, { at: AT, ...event });
    if (!next.ok) throw new Error(next.problem.id);
    const call = next.value;
    expect(call.state.answers.size).toBe(BY_EYE.length);
    for (const [question] of BY_EYE) expect(call.state.askedBefore).toContain(question);
    expect(cameraOf(call.state, rules)).toEqual(
      readPaste(SITE).reading.seen.adapters[1]?.addresses[0]?.address,
    );
    const defects = [...call.assessed.settled.findings].filter(([id]) => id.includes('gateway'));
    expect(defects.map(([, { value }]) => value)).toContain('outside');
  });
});

describe('what the questions read', () => {
  it('is read by one question each', () => {
    const read = rules.questions.flatMap(({ reads }) => (reads === undefined ? [] : [reads]));
    expect([...read].sort()).toEqual([...new Set(read)].sort());
    expect([...read].sort()).toEqual(Object.keys(OBSERVATIONS).sort());
  });

  it.each(
    rules.questions.flatMap((question) =>
      question.reads === undefined ? [] : [[question.id, question] as const],
    ),
  )('fits the answers of %s, every one of them', (_, question) => {
    const shape =
      question.reads === undefined ? 'number' : OBSERVATIONS[question.reads as keyof typeof OBSERVATIONS];
    const samples: readonly (string | number | boolean)[] =
      typeof shape === 'object'
        ? shape
        : {
            address: ['172.23.40.57'],
            mask: ['255.255.255.0'],
            'yes-no': [true, false],
            number: [0, 25, 100],
          }[shape];
    for (const sample of samples) expect(parseAnswer(question, sample).ok).toBe(true);
  });
});
