import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { advance, type Call, diagnosisOf, openCall, replay } from '../../src/call/call.js';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { VERSION } from '../../src/call/version.js';
import { resumeRecord } from '../../src/files/record.js';
import { CALLERS, folderWithHolder, hold } from './children.js';

const rules = JSON.parse(readFileSync('dist/rules.json', 'utf8'));
const digest = readFileSync('dist/rules.digest', 'utf8').trim();
const KILLS = 100;
const AT_ONCE = 4;

/** Numbers below one from a seed, the same everywhere (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

let folder = '';
let holder = '';
beforeAll(async () => {
  ({ folder, holder } = await folderWithHolder());
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Kills a call at a seeded moment; gives what it had said by then and the record's path. */
async function killed(seed: number): Promise<{ caller: string; said: readonly string[]; record: string }> {
  const random = seeded(seed);
  const caller = CALLERS[Math.floor(random() * CALLERS.length)] ?? '';
  const record = join(folder, `${seed}.jsonl`);
  const after = 1 + Math.floor(random() * 18);
  const pause = random() * 12;
  let armed = false;
  const { child, said, ended } = hold(holder, caller, record, `kill-${seed}`, (count, process) => {
    if (armed || count < after) return;
    armed = true;
    setTimeout(() => process.kill('SIGKILL'), pause);
  });
  await ended;
  expect(child.signalCode ?? child.exitCode).not.toBe(1);
  return { caller, said: said(), record };
}

describe('kill -9 in the middle of a call', () => {
  const whole = new Map<string, Awaited<ReturnType<typeof playScript>>>();
  let killedOnes = 0;

  it.each(Array.from({ length: KILLS / AT_ONCE }, (_, round) => round))(
    'loses no answer that was acknowledged, and the call goes on as if nothing had been (round %i)',
    async (round) => {
      const seeds = Array.from({ length: AT_ONCE }, (_, at) => 1 + round * AT_ONCE + at);
      for (const [at, { caller, said, record }] of (await Promise.all(seeds.map(killed))).entries()) {
        const seed = `seed ${seeds[at]}`;
        const acknowledged = said.slice(1).map((line) => JSON.parse(line));
        const text = resumeRecord(record, VERSION);
        expect(text.events.slice(0, acknowledged.length), seed).toEqual(acknowledged);
        expect(text.events.length, seed).toBeLessThanOrEqual(acknowledged.length + 1);
        const full = whole.get(caller) ?? (await play(caller));
        whole.set(caller, full);
        if (text.events.length < full.events.length) killedOnes += 1;
        expect(text.events, seed).toEqual(full.events.slice(0, text.events.length));
        const opened = await replay(rules, digest, text.header, text.events);
        if (!opened.ok) throw new Error(`${seed}: ${opened.problem.id}`);
        let call = opened.value;
        const unharmed = await upTo(full, text.events.length);
        expect(diagnosisOf(call).next, seed).toBe(diagnosisOf(unharmed).next);
        for (const event of full.events.slice(text.events.length)) {
          text.writer.append(event);
          call = await on(call, event);
        }
        text.writer.close();
        const name = (ticket: string): string =>
          ticket.replaceAll(text.header.id, 'id').replaceAll('whole', 'id');
        expect(name(ticketOf(call)), seed).toBe(name(ticketOf(full.call)));
      }
    },
  );

  it('killed most of them before their end', () => {
    expect(killedOnes).toBeGreaterThan(KILLS / 2);
  });
});

async function play(caller: string): Promise<Awaited<ReturnType<typeof playScript>>> {
  const script: Script = JSON.parse(readFileSync(caller, 'utf8'));
  return playScript(rules, digest, script, 'whole');
}

async function upTo(full: Awaited<ReturnType<typeof playScript>>, count: number): Promise<Call> {
  let call = await openCall(rules, digest, full.header);
  for (const event of full.events.slice(0, count)) call = await on(call, event);
  return call;
}

async function on(call: Call, event: Parameters<typeof advance>[1]): Promise<Call> {
  const next = await advance(call, event);
  if (!next.ok) throw new Error(next.problem.id);
  return next.value;
}
