import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Call, replay } from '../../../src/call/call.js';
import type { CallEvent } from '../../../src/call/events.js';
import { handedOver } from '../../../src/call/record/handed-over.js';
import { readRecordBytes } from '../../../src/call/record/read-record.js';
import { ticketOf } from '../../../src/call/ticket-of.js';
import { VERSION } from '../../../src/call/version.js';
import { readRecord } from '../../../src/files/record.js';
import { loaded } from '../../web/built.js';

const { rules, digest } = loaded();
const CALLS = readdirSync('transcripts-demo').filter((name) =>
  existsSync(`transcripts-demo/${name}/record.jsonl`),
);
/** In these the router's address outside was told. */
const WITH_PUBLIC_ADDRESS = ['17', '19'];
const at = '2026-11-25T09:00:00Z';

async function called(events: readonly CallEvent[]): Promise<Call> {
  const header = {
    record: 1,
    id: 'x',
    opened: at,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: 'desk' as const,
  };
  const result = await replay(rules, digest, header, events);
  if (!result.ok) throw new Error(result.problem.id);
  return result.value;
}

async function reopened(text: string): Promise<Call> {
  const read = readRecordBytes(new TextEncoder().encode(text), VERSION);
  if (!read.ok) throw new Error(read.problem.id);
  const result = await replay(rules, digest, read.value.header, read.value.events);
  if (!result.ok) throw new Error(result.problem.id);
  return result.value;
}

const answer = (question: string, given: string): CallEvent => ({
  at,
  type: 'answered',
  question,
  answer: given,
  origin: 'said',
});

test.each(CALLS)('%s, handed over, gives the same ticket to whoever opens it', async (name) => {
  const { header, events } = readRecord(`transcripts-demo/${name}/record.jsonl`, VERSION);
  const result = await replay(rules, digest, header, events);
  if (!result.ok) throw new Error(result.problem.id);
  const open = handedOver(result.value, { unmasked: true });
  expect(ticketOf(await reopened(open.text))).toBe(ticketOf(result.value));
  const masked = handedOver(result.value, { unmasked: false });
  const again = ticketOf(await reopened(masked.text));
  expect(masked.untold).toBe(WITH_PUBLIC_ADDRESS.includes(name.slice(0, 2)) ? 1 : 0);
  if (masked.untold === 0) expect(again).toBe(ticketOf(result.value));
});

describe('what the ticket hides', () => {
  const NOTE = 'Ring 020 7946 0958 or jo@shop.example, serial no. 4821-7733-9921, MAC 00:1b:44:11:3a:b7';
  const secrets = ['7946 0958', 'jo@shop', '4821-7733', '00:1b:44', '203.0.113.7'];

  test('is hidden in notes, texts and answers, and the call can be gone on with', async () => {
    const call = await called([
      answer('their-words', `It says 203.0.113.7. ${NOTE}`),
      { at, type: 'noted', text: NOTE },
      {
        at,
        type: 'pasted',
        paste: 'p',
        origin: 'pasted',
        text: `first\r\n${NOTE}\nthird`,
        answers: [],
        note: NOTE,
      },
    ]);
    const { text } = handedOver(call, { unmasked: false });
    for (const secret of secrets) expect(text).not.toContain(secret);
    expect(ticketOf(await reopened(text))).toBe(ticketOf(call));
    const pasted = JSON.parse(text.split('\n')[3] ?? '');
    expect(pasted.text.split(/\r\n|\n/).length).toBe(3);
  });

  test('goes as can’t tell where it is the whole answer, and that is counted', async () => {
    const call = await called([
      answer('camera-address', '203.0.113.7'),
      answer('camera-mask', '255.255.255.0'),
      { at, type: 'agreed', question: 'camera-address' },
      {
        at,
        type: 'pasted',
        paste: 'p',
        origin: 'pasted',
        text: 'gateway 203.0.113.1',
        answers: [{ question: 'camera-gateway', answer: '203.0.113.1', line: 1 }],
      },
    ]);
    const held = handedOver(call, { unmasked: false });
    expect(held).toMatchObject({ untold: 2, answers: 2, texts: 1, notes: 0, tried: 0 });
    expect(held.text).not.toContain('203.0.113');
    const again = await reopened(held.text);
    expect(again.state.answers.get('camera-address')?.value.kind).toBe('cant-tell');
    expect(again.state.answers.has('camera-gateway')).toBe(false);
    expect(again.state.answers.get('camera-mask')).toEqual(call.state.answers.get('camera-mask'));
  });

  test('stays where it is asked to stay', async () => {
    const call = await called([answer('camera-address', '203.0.113.7'), { at, type: 'noted', text: NOTE }]);
    const { text, untold } = handedOver(call, { unmasked: true });
    expect(untold).toBe(0);
    for (const secret of secrets) expect(text).toContain(secret);
  });
});

test('what was taken back is not handed over', async () => {
  const call = await called([
    { at, type: 'noted', text: 'a slip of the tongue' },
    { at, type: 'undone' },
    { at, type: 'noted', text: 'meant' },
  ]);
  const { text, notes } = handedOver(call, { unmasked: true });
  expect(text).not.toContain('slip');
  expect(notes).toBe(1);
});
