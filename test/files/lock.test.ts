import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lock } from '../../src/files/lock.js';
import { thisProcess } from '../../src/files/process-marks.js';
import { faultFrom } from './sample.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
let count = 0;
const fresh = () => join(folder, `call-${++count}.jsonl`);
const me = thisProcess();
const dead = { pid: spawnSync('true').pid, started: '', host: hostname() };

function marked(...marks: readonly unknown[]): string {
  const path = fresh();
  for (const [depth, mark] of marks.entries())
    writeFileSync(path + '.lock'.repeat(depth + 1), typeof mark === 'string' ? mark : JSON.stringify(mark));
  return path;
}

test('names this process in the mark, and removes the mark afterwards', () => {
  const path = fresh();
  const release = lock(path);
  expect(JSON.parse(readFileSync(`${path}.lock`, 'utf8'))).toMatchObject({
    pid: process.pid,
    host: hostname(),
  });
  release();
  expect(existsSync(`${path}.lock`)).toBe(false);
});

test.each([
  ['a process that has ended', [dead]],
  ['another process that had the number of one still running', [{ ...me, started: 'another-boot/1' }]],
  ['nobody, its maker having died before it wrote', ['']],
  ['nobody, in half a line', ['{"pid":']],
  ['a process that has ended, as does the mark of one that was clearing it', [dead, dead]],
  ['a process that has ended, and so on twice', [dead, dead, dead]],
])('takes over a mark that names %s', (_, marks) => {
  const path = marked(...marks);
  const release = lock(path);
  expect(readFileSync(`${path}.lock`, 'utf8')).toBe(JSON.stringify(me));
  release();
  expect(readdirSync(folder)).toEqual([]);
});

test('respects a mark whose start it cannot compare, as on systems that do not tell', () => {
  const path = marked({ ...me, started: '' });
  expect(faultFrom(() => lock(path))).toMatchObject({ exit: 3, sentence: { id: 'files.record-busy' } });
});

test('respects the mark of another computer, and says which file to delete', () => {
  const path = marked({ ...dead, host: 'north-office' });
  const fault = faultFrom(() => lock(path));
  expect(fault).toMatchObject({ exit: 3, sentence: { id: 'files.record-busy-elsewhere' } });
  expect(fault.message).toContain('north-office');
  expect(fault.message).toContain(`delete ${path}.lock`);
});

test('gives way to a process that is clearing the same dead mark', () => {
  const path = marked(dead, me);
  expect(faultFrom(() => lock(path)).sentence.id).toBe('files.record-busy');
  expect(readFileSync(`${path}.lock`, 'utf8')).toBe(JSON.stringify(dead));
});

test('gives up on a tower of dead marks, and says which file to delete', () => {
  const path = marked(dead, dead, dead, dead);
  const fault = faultFrom(() => lock(path));
  expect(fault).toMatchObject({ exit: 3, sentence: { id: 'files.record-lock-stuck' } });
});

test('does not remove a mark that another process has put in place of its own', () => {
  const path = fresh();
  const release = lock(path);
  writeFileSync(`${path}.lock`, JSON.stringify({ ...me, host: 'north-office' }));
  release();
  expect(existsSync(`${path}.lock`)).toBe(true);
});

test.skipIf(process.platform !== 'linux')(
  'takes over from one that ended but was not fetched by its parent',
  async () => {
    // The inner one ends after its parent has become a sleep, which never fetches it; a shell might.
    const parent = spawn('sh', ['-c', 'sleep 1 & echo $!; exec sleep 60'], {
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    try {
      const pid = Number(String((await once(parent.stdout, 'data'))[0]));
      const fields = () => readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
      await expect.poll(() => fields()[0], { timeout: 10_000 }).toBe('Z');
      const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
      const path = marked({ pid, started: `${boot}/${fields()[19]}`, host: hostname() });
      expect(() => lock(path)()).not.toThrow();
    } finally {
      parent.kill();
    }
  },
);
