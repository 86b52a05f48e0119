import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { readRecord, resumeRecord } from '../../src/files/record.js';
import { bundled, start } from './child.js';
import { faultFrom, HEADER, lineOf, WHYDARK } from './sample.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
let goOn = '';
let hold = '';
let count = 0;

beforeAll(async () => {
  [goOn, hold] = await Promise.all([bundled('go-on', folder), bundled('hold', folder)]);
});

function record(): string {
  const path = join(folder, `call-${++count}.jsonl`);
  writeFileSync(path, lineOf(HEADER));
  return path;
}

/** A process that tries to open the record once it is told to. */
async function holder(path: string) {
  const child = start(hold, path, WHYDARK);
  expect((await child.lines.next()).value).toBe('ready');
  return {
    ...child,
    open: async () => {
      child.process.stdin.write('go\n');
      return String((await child.lines.next()).value);
    },
  };
}

test('does not let two processes write to one record, and takes over from one that was killed', async () => {
  const path = record();
  const child = await holder(path);
  expect(await child.open()).toBe('held');
  const fault = faultFrom(() => resumeRecord(path, WHYDARK));
  expect(fault).toMatchObject({ exit: 3, sentence: { id: 'files.record-busy' } });
  expect(fault.message).toContain(`process ${child.process.pid} `);
  child.process.kill('SIGKILL');
  await child.ended;
  expect(existsSync(`${path}.lock`)).toBe(true);
  const { writer } = resumeRecord(path, WHYDARK);
  writer.close();
  expect(existsSync(`${path}.lock`)).toBe(false);
});

test('lets exactly one of many take over the mark of a dead process', async () => {
  for (let round = 0; round < 3; round += 1) {
    const path = record();
    const dead = { pid: 2 ** 22 + 1, started: 'another-boot/1', host: hostname() };
    writeFileSync(`${path}.lock`, JSON.stringify(dead));
    const children = await Promise.all(Array.from({ length: 6 }, () => holder(path)));
    const said = await Promise.all(children.map((child) => child.open()));
    expect(said.sort()).toEqual([...Array(5).fill('files.record-busy 3'), 'held']);
    for (const child of children) child.process.stdin.end();
    await Promise.all(children.map((child) => child.ended));
  }
});

test('loses no event that it acknowledged when it is killed', async () => {
  for (let round = 0; round < 8; round += 1) {
    const path = record();
    const child = start(goOn, path, WHYDARK);
    let acknowledged = -1;
    for await (const line of { [Symbol.asyncIterator]: () => child.lines }) {
      acknowledged = Number(line);
      if (acknowledged >= 3 + round * 7 && !child.process.killed) child.process.kill('SIGKILL');
    }
    await child.ended;
    const { events, torn } = readRecord(path, WHYDARK);
    expect(acknowledged).toBeGreaterThanOrEqual(3);
    expect(events.length).toBeGreaterThan(acknowledged);
    // At most the one that was being written goes without a word.
    expect(events.length + (torn === undefined ? 0 : 1)).toBeLessThanOrEqual(acknowledged + 2);
    const { writer } = resumeRecord(path, WHYDARK);
    writer.append({ at: '2026-11-25T08:40:00Z', type: 'closed', how: 'stopped' });
    writer.close();
    expect(existsSync(`${path}.lock`)).toBe(false);
    expect(readFileSync(path, 'utf8').split('\n')).toHaveLength(events.length + 3);
  }
});
