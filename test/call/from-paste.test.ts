import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CallEvent } from '../../src/call/events.js';
import { answersFrom, cameraOf, pasteEvent } from '../../src/call/from-paste.js';
import { readPaste } from '../../src/intake/paste.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import { address } from '../arithmetic/given.js';
import { lineWith, PRIVATE, SITE } from '../intake/a-site.js';
import { AT, played, said } from './play.js';
import { READING } from './reading-base.js';
import { TINY } from './tiny-rule-base.js';

const PAGE = 'Camera\nIP address: 172.23.40.57\nSubnet mask: 255.255.255.0\nDefault gateway: 172.23.41.1\n';
const TAKEN = { isHere: true };
const NO_EVENTS = { events: [] };

describe('the camera of a call', () => {
  test('is at the address that was answered', async () => {
    const { state } = await played([said('camera-address', '172.23.40.57')]);
    expect(cameraOf(state, READING)).toEqual(address('172.23.40.57'));
  });

  test.each([null, '0.0.0.0'])('is at no address after the answer %s', async (answer) => {
    const { state } = await played([said('camera-address', answer)]);
    expect(cameraOf(state, READING)).toBeUndefined();
  });

  test('is at no address where nothing was answered, or no question reads it', async () => {
    const { state } = await played([said('camera-address', '172.23.40.57')]);
    expect(cameraOf(state, TINY)).toBeUndefined();
    expect(cameraOf((await played([])).state, READING)).toBeUndefined();
  });
});

describe('the answers of a text', () => {
  test('are those that questions read, in the order of the text, each with its line', () => {
    expect(answersFrom(READING, readPaste(SITE), { ...TAKEN, adapter: 0 }, undefined)).toEqual([
      { question: 'loose', answer: true, line: lineWith('Pinging') },
      { question: 'camera-address', answer: '172.23.40.57', line: lineWith('IP address:') },
      { question: 'camera-mask', answer: '255.255.255.0', line: lineWith('IP address:') },
      { question: 'camera-gateway', answer: '172.23.41.1', line: lineWith('172.23.41.1') },
    ]);
  });

  test('are none where no question reads anything', () => {
    expect(answersFrom(TINY, readPaste(SITE), TAKEN, undefined)).toEqual([]);
  });

  test('leave out what a question would not take', () => {
    const [first, ...others] = READING.questions.filter(({ id }) => id === 'volts');
    const odd: RuleBase = {
      ...READING,
      questions: first ? [{ ...first, reads: 'camera.address' }, ...others] : [],
    };
    expect(odd.questions).toHaveLength(1);
    expect(answersFrom(odd, readPaste(PAGE), TAKEN, undefined)).toEqual([]);
  });

  test('of a computer elsewhere are what devices say of themselves, and nothing that it sent', () => {
    const answers = answersFrom(READING, readPaste(SITE), { isHere: false, adapter: 0 }, undefined);
    expect(answers.map(({ question }) => question)).toEqual([
      'camera-address',
      'camera-mask',
      'camera-gateway',
    ]);
  });

  test('count pings for the camera that the call knows', () => {
    const pings = SITE.slice(SITE.indexOf('Pinging'), SITE.indexOf('Camera'));
    const paste = readPaste(pings);
    expect(answersFrom(READING, paste, TAKEN, undefined)).toEqual([]);
    expect(answersFrom(READING, paste, TAKEN, address('172.23.40.57'))).toEqual([
      { question: 'loose', answer: true, line: 1 },
    ]);
    expect(answersFrom(READING, paste, TAKEN, address('172.23.40.58'))).toEqual([]);
  });

  test('are what was put in, whatever the numbers', () => {
    const octet = fc.integer({ min: 1, max: 254 });
    fc.assert(
      fc.property(octet, octet, octet, fc.integer({ min: 0, max: 1 }), (own, gateway, net, blanks) => {
        const [is, by] = [`172.23.${net}.${own}`, `172.23.${net}.${gateway}`];
        fc.pre(own !== gateway);
        const text = `Camera\n${'\n'.repeat(blanks)}IP address: ${is}\nSubnet mask: 255.255.254.0\nDefault gateway: ${by}\n`;
        const found = answersFrom(READING, readPaste(text), TAKEN, undefined);
        expect(Object.fromEntries(found.map(({ question, answer }) => [question, answer]))).toEqual({
          'camera-address': is,
          'camera-mask': '255.255.254.0',
          'camera-gateway': by,
        });
        for (const { line } of found) expect(text.split('\n')[line - 1]).toMatch(/\d\.\d/);
      }),
      { numRuns: 50 },
    );
  });
});

describe('the event of a text', () => {
  const answers = [{ question: 'camera-address', answer: '172.23.40.57', line: 2 }];

  test('holds the text, its answers and where it came from', () => {
    expect(pasteEvent(NO_EVENTS, readPaste(PAGE), answers, TAKEN)).toEqual({
      type: 'pasted',
      paste: 'p1',
      origin: 'pasted',
      text: PAGE,
      answers,
    });
    expect(pasteEvent(NO_EVENTS, readPaste(PAGE), answers, TAKEN, 'read').origin).toBe('read');
  });

  test('is numbered among the texts of the call', () => {
    const note: CallEvent = { at: AT, type: 'noted', text: 'rang twice' };
    const first: CallEvent = { at: AT, ...pasteEvent(NO_EVENTS, readPaste(PAGE), answers, TAKEN) };
    expect(pasteEvent({ events: [note, first, note] }, readPaste(PAGE), answers, TAKEN).paste).toBe('p2');
  });

  test('keeps nothing that must not be kept', () => {
    const kept = JSON.stringify(pasteEvent(NO_EVENTS, readPaste(SITE), [], TAKEN)).toLowerCase();
    for (const secret of PRIVATE) expect(kept).not.toContain(secret);
    expect(kept).toContain('172.23.40.57');
  });
});

describe('a note of what stands out', () => {
  const TWO_MACS = '172.23.40.57   02-00-5e-10-00-57   dynamic\n172.23.40.57   02-00-5e-10-00-58   dynamic\n';
  const noteOf = (text: string, isHere: boolean): string | undefined =>
    pasteEvent(NO_EVENTS, readPaste(text), [], { isHere }).note;

  test('goes with the answers, and hides MAC addresses', () => {
    expect(noteOf(SITE, true)).toContain('came from 172.23.40.2, not from its gateway 172.23.40.1');
    expect(noteOf(TWO_MACS, true)).toBe(
      'From the text: Two devices answer at 172.23.40.57: xx:xx:xx:xx:00:57, xx:xx:xx:xx:00:58.',
    );
  });

  test('is not made of a computer that is elsewhere, nor where nothing stands out', () => {
    expect(noteOf(SITE, false)).toBeUndefined();
    expect(noteOf(PAGE, true)).toBeUndefined();
  });
});
