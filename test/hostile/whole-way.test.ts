import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { screenOf } from '../../src/call/screen.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { VERSION } from '../../src/call/version.js';
import { rankingText } from '../../src/cli/ranking-text.js';
import { screenText } from '../../src/cli/show-screen.js';
import { createRecord, readRecord } from '../../src/files/record.js';
import { HOSTILE } from '../ticket/hostile.js';
import { commonmarkShape, gfmTables } from '../ticket/read-markdown.js';
import { callWith, eventsWith, HEADER } from './typed-into-a-call.js';

/** Control characters but the line feed, bidirectional and invisible marks, halves of pairs. */
const UNSEEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;
const MORE: readonly string[] = [
  '\u001b]52;c;Y2xpcGJvYXJk\u0007',
  '\u202egnp.exe',
  'Z\u0351\u0310'.repeat(200),
  '\ud800',
  'x\u0000y',
  'word '.repeat(400),
];
const plain = (_: unknown, text: string): string => text;

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'whydark-hostile-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Shape of the ticket, and how many cells each row of its tables has. */
async function shape(words: string): Promise<unknown> {
  const ticket = ticketOf(await callWith(eventsWith(() => words)));
  expect(UNSEEN.exec(ticket)).toBeNull();
  return [commonmarkShape(ticket), gfmTables(ticket).map((table) => table.map((row) => row.length))];
}

describe('hostile words, typed wherever words can be typed', () => {
  it.each([...HOSTILE, ...MORE].map((words, at) => [at, JSON.stringify(words).slice(0, 50), words] as const))(
    '%i %s leaves the ticket as sound as its harmless twin',
    async (_, __, words) => {
      // Words around it, so that nothing is left out for being empty.
      expect(await shape(`a ${words} z`)).toEqual(await shape('a harmless z'));
    },
  );

  it('leaves it so in any mixture', async () => {
    const harmless = await shape('a harmless z');
    const mixture = fc.array(fc.constantFrom(...HOSTILE, ...MORE), { minLength: 1, maxLength: 5 });
    await fc.assert(
      fc.asyncProperty(mixture, async (pieces) => {
        expect(await shape(`a ${pieces.join('')} z`)).toEqual(harmless);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('shows a screen and a ranking that are sound and fit', async () => {
    for (const words of [...HOSTILE, ...MORE]) {
      const call = await callWith(eventsWith(() => `a ${words} z`));
      const shown = `${screenText(screenOf(call), plain, 80)}\n${rankingText(call, plain, 80)}`;
      expect(UNSEEN.exec(shown), JSON.stringify(words)).toBeNull();
      expect(Math.max(...shown.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    }
  });

  it('is kept in the record as it was typed, one event a line', () => {
    const path = join(folder, 'kept.jsonl');
    const events = [...HOSTILE, ...MORE].filter(
      (words) => words.isWellFormed?.() !== false && words !== '\ud800',
    );
    const writer = createRecord(path, HEADER);
    const noted = events.map((text) => ({ at: HEADER.opened, type: 'noted' as const, text }));
    for (const event of noted) writer.append(event);
    writer.close();
    expect(readFileSync(path, 'utf8').split('\n')).toHaveLength(noted.length + 2);
    expect(readRecord(path, VERSION).events).toEqual(noted);
  });

  it('reaches no terminal as a control character when the record is played again', () => {
    const path = join(folder, 'played.jsonl');
    const writer = createRecord(path, HEADER);
    for (const event of eventsWith(() => `a ${MORE.slice(0, 4).join(' ')} \u001b[2J z`)) {
      if (!JSON.stringify(event).includes('\\ud800')) writer.append(event);
    }
    for (const text of ['\u001b]8;;http://camera.example\u0007x', '\u009b2J', '\u202eabc']) {
      writer.append({ at: HEADER.opened, type: 'noted', text });
    }
    writer.close();
    for (const command of ['replay', 'ticket']) {
      const { stdout, status } = spawnSync(process.execPath, ['dist/whydark.js', command, path], {
        encoding: 'utf8',
      });
      expect(status).toBe(0);
      expect(UNSEEN.exec(stdout), command).toBeNull();
    }
  });

  it('may be a million letters long: the record keeps them, the ticket says how many it leaves out', async () => {
    const long = 'long words '.repeat(95_000);
    const began = performance.now();
    const ticket = ticketOf(await callWith(eventsWith((at) => (at === 90 ? long : 'short'))));
    expect(ticket.length).toBeLessThan(40_000);
    expect(performance.now() - began).toBeLessThan(20_000);
    const path = join(folder, 'long.jsonl');
    const writer = createRecord(path, HEADER);
    writer.append({ at: HEADER.opened, type: 'noted', text: long });
    writer.close();
    expect(readRecord(path, VERSION).events).toEqual([{ at: HEADER.opened, type: 'noted', text: long }]);
  }, 60_000);
});
