import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createRecord, readRecord, resumeRecord } from '../../src/files/record.js';
import { bestMilliseconds } from '../timing/times-as-long.js';
import { anyEvent, faultFrom, HEADER, lineOf, note, ONE_OF_EACH, WHYDARK } from './sample.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
let count = 0;
const fresh = () => join(folder, `call-${++count}.jsonl`);

/** A closed record with these events; gives its path. */
function kept(...events: readonly (typeof ONE_OF_EACH)[number][]): string {
  const path = fresh();
  writeFileSync(path, [HEADER, ...events].map(lineOf).join(''));
  return path;
}

test('keeps the header and each event as one line', () => {
  const path = fresh();
  const writer = createRecord(path, HEADER);
  expect(readFileSync(path, 'utf8')).toBe(lineOf(HEADER));
  for (const [index, event] of ONE_OF_EACH.entries()) {
    writer.append(event);
    expect(readRecord(path, WHYDARK).events).toEqual(ONE_OF_EACH.slice(0, index + 1));
  }
  writer.close();
  expect(readFileSync(path, 'utf8')).toBe([HEADER, ...ONE_OF_EACH].map(lineOf).join(''));
});

test('gives any events back as they were added', () => {
  fc.assert(
    fc.property(fc.array(anyEvent, { maxLength: 5 }), (events) => {
      const path = fresh();
      const writer = createRecord(path, HEADER);
      for (const event of events) writer.append(event);
      writer.close();
      expect(readRecord(path, WHYDARK).events).toEqual(events);
    }),
    { numRuns: 40 },
  );
});

test('keeps half a surrogate pair, which UTF-8 cannot hold', () => {
  const path = fresh();
  const writer = createRecord(path, HEADER);
  writer.append(note('\ud83c'));
  writer.close();
  expect(readRecord(path, WHYDARK).events).toEqual([note('\ud83c')]);
});

test.skipIf(process.platform === 'win32')('lets only its owner read the record, whatever the umask', () => {
  const before = process.umask(0);
  try {
    const path = fresh();
    const writer = createRecord(path, HEADER);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(statSync(`${path}.lock`).mode & 0o777).toBe(0o600);
    writer.close();
  } finally {
    process.umask(before);
  }
});

test('never begins a record over a file that is there', () => {
  const path = kept(note('old'));
  const before = readFileSync(path);
  expect(faultFrom(() => createRecord(path, HEADER))).toMatchObject({
    exit: 2,
    sentence: { id: 'files.exists' },
  });
  expect(readFileSync(path)).toEqual(before);
  expect(existsSync(`${path}.lock`)).toBe(false);
});

test.each([
  ['a folder that is not there', 'none/call.jsonl', 'files.missing'],
  ['a folder that is a file', 'file/call.jsonl', 'files.not-folder'],
])('says so for %s', (_, name, id) => {
  writeFileSync(join(folder, 'file'), '');
  for (const work of [createRecord, readRecord, resumeRecord] as const) {
    const use = work as (path: string, second: unknown) => unknown;
    const second = work === createRecord ? HEADER : WHYDARK;
    expect(faultFrom(() => use(join(folder, name), second))).toMatchObject({ exit: 2, sentence: { id } });
  }
});

test('says so for a folder in place of a record, and leaves no lock', () => {
  const path = fresh();
  mkdirSync(path);
  for (const work of [readRecord, resumeRecord])
    expect(faultFrom(() => work(path, WHYDARK))).toMatchObject({
      exit: 2,
      sentence: { id: 'files.is-folder' },
    });
  expect(existsSync(`${path}.lock`)).toBe(false);
});

test('goes on with a record where it ended', () => {
  const path = kept(note('a'));
  const { writer, events, header } = resumeRecord(path, WHYDARK);
  expect([header, ...events]).toEqual([HEADER, note('a')]);
  writer.append(note('b'));
  writer.close();
  expect(readFileSync(path, 'utf8')).toBe([HEADER, note('a'), note('b')].map(lineOf).join(''));
});

test('cuts a torn last line off before the next event, wherever the cut is', () => {
  const whole = [HEADER, note('a')].map(lineOf).join('');
  const last = Buffer.from(lineOf(note('Tür 北門')));
  for (let end = 1; end < last.length; end += 1) {
    const path = fresh();
    const torn = Buffer.concat([Buffer.from(whole), last.subarray(0, end)]);
    writeFileSync(path, torn);
    const call = resumeRecord(path, WHYDARK);
    expect(call.torn).toEqual({ line: 3, bytes: end });
    expect(readFileSync(path)).toEqual(torn);
    call.writer.append(note('b'));
    call.writer.close();
    expect(readFileSync(path, 'utf8')).toBe(whole + lineOf(note('b')));
  }
});

test('never rewrites what a newer release wrote', () => {
  const path = fresh();
  const newer = `{"record":1, "room":"north", ${JSON.stringify({ ...HEADER, whydark: '9.0.0' }).slice(12)}\n`;
  const lines = `{ "volts":47.90,"type":"measured","at":"2026-11-25T08:31:00Z" }\r\n${lineOf(note('a'))}`;
  writeFileSync(path, newer + lines);
  const call = resumeRecord(path, WHYDARK);
  expect(call.strangers).toHaveLength(1);
  call.writer.append(note('b'));
  call.writer.close();
  expect(readFileSync(path, 'utf8')).toBe(newer + lines + lineOf(note('b')));
});

test('holds the lock from opening to closing', () => {
  const path = fresh();
  const writer = createRecord(path, HEADER);
  expect(readdirSync(folder)).toContain(`${path.split('/').at(-1)}.lock`);
  expect(faultFrom(() => resumeRecord(path, WHYDARK))).toMatchObject({
    exit: 3,
    sentence: { id: 'files.record-busy', with: { pid: process.pid } },
  });
  expect(readRecord(path, WHYDARK).events).toEqual([]);
  writer.close();
  expect(existsSync(`${path}.lock`)).toBe(false);
  const again = resumeRecord(path, WHYDARK);
  writer.close();
  expect(existsSync(`${path}.lock`)).toBe(true);
  again.writer.close();
});

test('holds the same lock under another name of the record', () => {
  const path = kept();
  const other = fresh();
  symlinkSync(path, other);
  const { writer } = resumeRecord(other, WHYDARK);
  expect(faultFrom(() => resumeRecord(path, WHYDARK)).sentence.id).toBe('files.record-busy');
  writer.close();
});

test('lets go of the lock when the record cannot be read', () => {
  const path = kept();
  appendFileSync(path, '{"at":1}\n');
  expect(faultFrom(() => resumeRecord(path, WHYDARK)).sentence.id).toBe('files.event-needs-type');
  expect(existsSync(`${path}.lock`)).toBe(false);
});

test.each([
  ['added to it', (path: string) => appendFileSync(path, lineOf(note('foreign')))],
  ['cut it', (path: string) => writeFileSync(path, lineOf(HEADER))],
  ['deleted it', (path: string) => rmSync(path)],
  ['put another in its place', (path: string) => renameSync(kept(note('b')), path)],
])('writes nothing more when something else %s', (_, meddle) => {
  const path = kept(note('a'));
  const { writer } = resumeRecord(path, WHYDARK);
  meddle(path);
  const before = existsSync(path) && readFileSync(path, 'utf8');
  expect(faultFrom(() => writer.append(note('b')))).toMatchObject({
    exit: 3,
    sentence: { id: 'files.record-changed' },
  });
  expect(existsSync(path) && readFileSync(path, 'utf8')).toBe(before);
  writer.close();
});

test('refuses to write what would read back as another answer', () => {
  const path = fresh();
  const writer = createRecord(path, HEADER);
  const { at } = note('');
  const event = { at, type: 'answered', question: 'length', answer: Number.NaN, origin: 'said' } as const;
  expect(() => writer.append(event)).toThrow('files.event-needs-answer');
  writer.close();
  expect(() => writer.append(note('late'))).toThrow('closed');
  expect(readFileSync(path, 'utf8')).toBe(lineOf(HEADER));
  expect(() => createRecord(fresh(), { ...HEADER, opened: 'now' })).toThrow('files.header-needs');
});

test('opens 10,000 events in well under a second', () => {
  const path = kept(...Array.from({ length: 10_000 }, (_, index) => ONE_OF_EACH[index % 10] ?? note('')));
  const open = (): void => expect(readRecord(path, WHYDARK).events).toHaveLength(10_000);
  expect(bestMilliseconds(open, 500)).toBeLessThan(500);
});
