import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { replay } from '../../src/call/call.js';
import type { CallEvent, PastedAnswer } from '../../src/call/events.js';
import { readRecord } from '../../src/files/record.js';
import { temporaryFolder } from '../files/temporary.js';
import { AT, agreed, DIGEST, headerFor, played, refusal, replayed, said, undone } from './play.js';
import { TINY } from './tiny-rule-base.js';

const folder = temporaryFolder();
const HERE = said('at-site', 'here');
const LIT = said('lights', 'on');
const ANSWERS: readonly PastedAnswer[] = [
  { question: 'camera-address', answer: '172.23.40.57', line: 12 },
  { question: 'camera-mask', answer: '255.255.255.0', line: 13 },
  { question: 'camera-gateway', answer: '172.23.41.1', line: 14 },
];
const pasted = (
  answers: readonly PastedAnswer[] = ANSWERS,
  origin: 'pasted' | 'read' = 'pasted',
  paste = 'p1',
): CallEvent => ({ at: AT, type: 'pasted', paste, origin, text: 'IP address: 172.23.40.57', answers });

const rate = (call: Awaited<ReturnType<typeof played>>): number | undefined =>
  call.assessed.settled.findings.get('gateway-place')?.errorRate;

describe('a pasted text', () => {
  it('answers all its questions at once, each with its paste and its line', async () => {
    const { state } = await played([HERE, pasted()]);
    expect(state.answers.get('camera-gateway')).toEqual({
      question: 'camera-gateway',
      value: { kind: 'address', address: expect.objectContaining({ kind: 'ipv4' }) },
      origin: 'pasted',
      paste: 'p1',
      line: 14,
    });
    expect(state.history.map(({ question, line }) => [question, line])).toEqual([
      ['at-site', undefined],
      ['camera-address', 12],
      ['camera-mask', 13],
      ['camera-gateway', 14],
    ]);
  });

  it('shows what the same answers show when they are said', async () => {
    const call = await played([HERE, pasted()]);
    const byMouth = await played([HERE, ...ANSWERS.map(({ question, answer }) => said(question, answer))]);
    expect(call.assessed.settled.findings.get('gateway-place')?.value).toBe('outside');
    expect(byMouth.assessed.settled.findings.get('gateway-place')?.value).toBe('outside');
  });

  it('is asked about no more', async () => {
    const { state } = await played([HERE, pasted()]);
    for (const { question } of ANSWERS) expect(state.askedBefore).toContain(question);
  });

  it('without any answer changes nothing, and is kept', async () => {
    const { state } = await played([HERE, pasted([])]);
    const before = await played([HERE]);
    expect({ ...state, events: [] }).toEqual({ ...before.state, events: [] });
    expect(state.events).toHaveLength(2);
  });
});

describe('one answer that does not fit', () => {
  it.each<[string, PastedAnswer, string]>([
    [
      'to a question that is not there',
      { question: 'toaster', answer: true, line: 15 },
      'no question "toaster"',
    ],
    ['of the wrong kind', { question: 'account', answer: 7, line: 15 }, 'has to be yes or no'],
    ['that is none of the choices', { question: 'lights', answer: 'green', line: 15 }, 'on, off'],
  ])('%s refuses the whole text, wherever it stands', async (_, odd, words) => {
    for (const answers of [
      [...ANSWERS, odd],
      [odd, ...ANSWERS],
    ])
      expect(await refusal([HERE], pasted(answers))).toContain(words);
  });

  it('leaves the call as it was', async () => {
    const odd = pasted([...ANSWERS, { question: 'toaster', answer: true, line: 15 }]);
    const before = await played([HERE]);
    expect(await refusal([HERE], odd)).not.toBe('taken');
    expect(await replay(TINY, DIGEST, headerFor(), [HERE, odd])).toMatchObject({ ok: false });
    expect((await played([HERE])).state).toEqual(before.state);
  });
});

describe('taking a text back', () => {
  it('takes back all of it in one go', async () => {
    const back = await played([HERE, pasted(), undone]);
    const never = await played([HERE]);
    expect(back.state).toEqual(never.state);
    expect(back.step).toEqual(never.step);
  });

  it('gives what was said before its value again', async () => {
    const before = [HERE, said('camera-address', '172.23.40.21')];
    expect((await played([...before, pasted(), undone])).state).toEqual((await played(before)).state);
  });

  it('takes back the later of two texts only', async () => {
    const second = pasted([{ question: 'camera-mask', answer: '255.255.0.0', line: 3 }], 'pasted', 'p2');
    const { state } = await played([HERE, pasted(), second, undone]);
    expect(state.answers.get('camera-mask')).toMatchObject({ paste: 'p1', line: 13 });
  });
});

describe('one answer that is corrected afterwards', () => {
  const corrected = [HERE, pasted(), said('camera-gateway', '172.23.40.1')];

  it('leaves the others as they were pasted', async () => {
    const { state } = await played(corrected);
    const { state: before } = await played([HERE, pasted()]);
    for (const question of ['camera-address', 'camera-mask'])
      expect(state.answers.get(question)).toEqual(before.answers.get(question));
    expect(state.answers.get('camera-gateway')).not.toHaveProperty('line');
    expect(state.answers.get('camera-gateway')).not.toHaveProperty('paste');
    expect(state.answers.get('camera-gateway')?.origin).toBe('said');
  });

  it('counts instead of the pasted one', async () => {
    const call = await played(corrected);
    expect(call.assessed.settled.findings.get('gateway-place')?.value).toBe('inside');
  });

  it('is pasted again once the correction is taken back', async () => {
    expect((await played([...corrected, undone])).state).toEqual((await played([HERE, pasted()])).state);
  });
});

describe('how far a text is relied upon', () => {
  const { reliability } = TINY.manifest;

  it('counts one text once, however many of its numbers a sum takes', async () => {
    expect(rate(await played([HERE, pasted()]))).toBeCloseTo(reliability.pasted, 12);
    expect(rate(await played([HERE, pasted(ANSWERS, 'read')]))).toBeCloseTo(reliability.read, 12);
  });

  it('adds up two texts, and what was said beside them', async () => {
    const [address, mask, gateway] = ANSWERS.map((one) => [one]);
    const { pasted: e, read } = reliability;
    const two = [pasted(address), pasted([...(mask ?? []), ...(gateway ?? [])], 'read', 'p2')];
    expect(rate(await played([HERE, ...two]))).toBeCloseTo(1 - (1 - e) * (1 - read), 12);
    const mixed = [HERE, pasted(), said('camera-gateway', '172.23.41.1')];
    const saidRate = reliability.said.address ?? Number.NaN;
    expect(rate(await played(mixed))).toBeCloseTo(1 - (1 - e) * (1 - saidRate), 12);
  });

  it('is surer than word of mouth, and proves what it shows without reading back', async () => {
    const byMouth = await played([
      HERE,
      LIT,
      ...ANSWERS.map(({ question, answer }) => said(question, answer)),
    ]);
    const call = await played([HERE, LIT, pasted()]);
    expect(rate(call)).toBeLessThan(rate(byMouth) ?? 0);
    expect(byMouth.step.kind).toBe('read-back');
    expect(call.step.kind).not.toBe('read-back');
  });

  it('is no less sure after it was agreed to', async () => {
    const { state } = await played([HERE, pasted(), agreed('camera-mask')]);
    expect(state.answers.get('camera-mask')).toMatchObject({ origin: 'pasted', paste: 'p1', line: 13 });
  });
});

describe('where the call stands after a text', () => {
  const further: readonly PastedAnswer[] = [{ question: 'socket', answer: 'live', line: 2 }];

  it('is where it stood: nobody walks for what stands in a text', async () => {
    const { state } = await played([HERE, said('account', false), pasted(further)]);
    expect([state.here, state.lastStage]).toEqual(['site', 'sign-in']);
  });

  it('is at its beginning where the text comes first', async () => {
    const { state } = await played([pasted(further)]);
    expect(state.here).toBe('site');
    expect(state).not.toHaveProperty('lastStage');
  });
});

describe('a record with texts in it', () => {
  const events = [HERE, pasted(), said('camera-gateway', '172.23.40.1'), pasted([], 'read', 'p2'), undone];

  it('gives the same call when it is read from the disk and played again', async () => {
    const path = join(folder, 'call.jsonl');
    writeFileSync(path, [headerFor(), ...events].map((line) => `${JSON.stringify(line)}\n`).join(''));
    const read = readRecord(path, '0.1.0');
    expect(read.events).toEqual(events);
    const again = await replayed(read.events);
    const call = await played(events);
    expect(again.state).toEqual(call.state);
    expect(again.step).toEqual(call.step);
    expect(again.assessed.probabilities).toEqual(call.assessed.probabilities);
  });
});
