import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readRecordText } from '../../src/files/record-text.js';
import { anyEvent, faultFrom, HEADER, lineOf, note, ONE_OF_EACH, WHYDARK } from './sample.js';

const PATH = '/calls/one.jsonl';
const read = (text: string | Uint8Array, whydark = WHYDARK) =>
  readRecordText(typeof text === 'string' ? Buffer.from(text) : text, PATH, whydark);
const lines = (...values: unknown[]) => values.map(lineOf).join('');

test('gives the header and every event back as they were written', () => {
  const text = lines(HEADER, ...ONE_OF_EACH);
  expect(read(text)).toEqual({
    header: HEADER,
    events: ONE_OF_EACH,
    strangers: [],
    length: Buffer.byteLength(text),
  });
});

test('drops and reports the last line when it is cut at any of its bytes, and nothing else', () => {
  fc.assert(
    fc.property(fc.array(anyEvent, { maxLength: 3 }), anyEvent, (before, last) => {
      const whole = Buffer.from(lines(HEADER, ...before));
      const all = Buffer.concat([whole, Buffer.from(lineOf(last))]);
      for (let end = whole.length; end <= all.length; end += 1) {
        const bytes = end - whole.length;
        const found = read(all.subarray(0, end));
        const kept = end === all.length;
        expect(found.events).toEqual(kept ? [...before, last] : before);
        expect(found.length).toBe(kept ? end : whole.length);
        expect(found.torn).toEqual(kept || bytes === 0 ? undefined : { line: before.length + 2, bytes });
      }
    }),
    { numRuns: 30 },
  );
});

test.each([
  ['half of it and a newline', Buffer.from('{"at":"2026-\n')],
  ['the zeroes that a power cut leaves', Buffer.alloc(40)],
  ['half a character', Buffer.from([0x22, 0xc3, 0x0a])],
])('takes a last line for torn when it holds %s', (_, rest) => {
  const whole = Buffer.from(lines(HEADER, note('kept')));
  expect(read(Buffer.concat([whole, rest]))).toMatchObject({
    events: [note('kept')],
    torn: { line: 3, bytes: rest.length },
    length: whole.length,
  });
});

test('names the line that is broken in the middle', () => {
  const fault = faultFrom(() => read(`${lines(HEADER, note('a'))}{"at":\n${lines(note('b'))}`));
  expect(fault).toMatchObject({
    exit: 2,
    sentence: { id: 'files.line-broken', with: { line: 3, path: PATH } },
  });
  expect(fault.message).toContain('Line 3 of /calls/one.jsonl');
});

test('takes an empty line in the middle for broken', () => {
  expect(faultFrom(() => read(`${lines(HEADER)}\n${lines(note('b'))}`)).sentence.id).toBe(
    'files.line-broken',
  );
});

test('names the line, the kind and the field that is wrong', () => {
  const broken = { at: '2026-11-25T08:31:00Z', type: 'answered', answer: true, origin: 'said' };
  const fault = faultFrom(() => read(lines(HEADER, ...Array(5).fill(note('a')), broken)));
  expect(fault.exit).toBe(2);
  expect(fault.message).toBe("Line 7 of /calls/one.jsonl: 'answered' needs 'question', a text.");
});

test.each([
  ['is empty', ''],
  ['has half a first line', JSON.stringify(HEADER).slice(0, 30)],
  ['has a first line without its newline', JSON.stringify(HEADER)],
  ['begins with an event', lines(note('a'))],
  ['is no JSON', 'camera,dark\n1,2\n'],
])('says that a file which %s is no record', (_, text) => {
  expect(faultFrom(() => read(text))).toMatchObject({ exit: 2, sentence: { id: 'files.record-no-header' } });
});

test.each([0, 2, 17])('refuses a record of format %i, naming both formats', (record) => {
  const fault = faultFrom(() => read(lines({ ...HEADER, record, role: 'unheard-of' })));
  expect(fault.exit).toBe(2);
  expect(fault.message).toContain(`format ${record}. This program reads format 1.`);
});

test.each([
  ['id', { id: '' }],
  ['opened', { opened: 'yesterday' }],
  ['whydark', { whydark: 'new' }],
  ['rules.version', { rules: { ...HEADER.rules, version: 1 } }],
  ['rules.digest', { rules: { version: '0.1.0', digest: 'A'.repeat(64) } }],
  ['rules.version', { rules: null }],
  ['role', { role: 'boss' }],
])('names %s when the header has it wrong', (field, wrong) => {
  const fault = faultFrom(() => read(lines({ ...HEADER, ...wrong })));
  expect(fault.sentence).toEqual({ id: 'files.header-needs', with: { field, path: PATH, line: 1 } });
});

test('passes fields along that it does not know', () => {
  const newer = { ...note('a'), weather: { rain: true } };
  const header = { ...HEADER, room: 'north' };
  expect(read(lines(header, newer))).toMatchObject({ header, events: [newer] });
});

test('sets events of unknown kinds aside when a newer release opened the call', () => {
  const stranger = { at: '2026-11-25T08:31:00Z', type: 'measured', volts: 47.9 };
  const text = lines({ ...HEADER, whydark: '0.2.0' }, note('a'), stranger, note('b'));
  expect(read(text, '0.1.9')).toMatchObject({
    events: [note('a'), note('b')],
    strangers: [{ line: 3, event: stranger }],
    length: Buffer.byteLength(text),
  });
});

test.each(['0.2.0', '0.3.0'])('refuses an unknown kind in a call of 0.2.0 when %s reads it', (whydark) => {
  const stranger = { at: '2026-11-25T08:31:00Z', type: 'ans\u001b[31mwered' };
  const fault = faultFrom(() => read(lines({ ...HEADER, whydark: '0.2.0' }, stranger, note('b')), whydark));
  expect(fault.sentence).toMatchObject({
    id: 'files.event-unknown',
    with: { line: 2, type: 'ans?[31mwered' },
  });
});
