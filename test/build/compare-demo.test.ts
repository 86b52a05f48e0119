import { appendFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareDemo, renewDemo } from '../../src/build/demo.js';
import { DIGEST } from '../call/play.js';
import { TINY } from '../call/tiny-rule-base.js';
import { temporaryFolder } from '../files/temporary.js';

const LOADED = { rules: TINY, digest: DIGEST };
const CALLER = {
  title: 'a plug pulled out',
  story: 'The cleaner pulled the plug.',
  opened: '2026-11-25T08:30:00.000Z',
  role: 'desk',
  answers: { 'at-site': 'here', lights: 'off', socket: 'dead' },
  remedies: { jiggle: { took: 'no', picture: 'no' }, 'plug-in': { took: 'yes', picture: 'yes' } },
};
const EXPECTED = { verdict: { kind: 'restored', cause: 'supply-off' }, firstRemedy: 'jiggle' };

const root = temporaryFolder();
let made = 0;

/** A recorded call in a folder of its own, with what was expected of it. */
async function recorded(expected: object = EXPECTED): Promise<string> {
  const folder = join(root, String(made++));
  mkdirSync(folder);
  writeFileSync(join(folder, 'caller.json'), JSON.stringify(CALLER));
  writeFileSync(join(folder, 'expected.json'), JSON.stringify(expected));
  await renewDemo(folder, LOADED);
  return folder;
}

describe('a recorded call', () => {
  it('that ends as was written down differs in nothing', async () => {
    expect(await compareDemo(await recorded(), LOADED)).toEqual([]);
  });

  it('is written with its ticket, and what was expected is left alone', async () => {
    const folder = await recorded();
    expect(readFileSync(join(folder, 'record.jsonl'), 'utf8').split('\n').length).toBeGreaterThan(4);
    expect(readFileSync(join(folder, 'ticket.md'), 'utf8')).toContain('plug-in');
    expect(JSON.parse(readFileSync(join(folder, 'expected.json'), 'utf8'))).toEqual(EXPECTED);
  });

  it.each<[string, object, string]>([
    [
      'another verdict',
      { ...EXPECTED, verdict: { kind: 'named', cause: 'supply-off' } },
      'verdict: expected named, got restored',
    ],
    [
      'another cause',
      { ...EXPECTED, verdict: { kind: 'restored', cause: 'lead-broken' } },
      'cause: expected lead-broken, got supply-off',
    ],
    [
      'another first remedy',
      { ...EXPECTED, firstRemedy: 'swap-lead' },
      'first remedy: expected swap-lead, got jiggle',
    ],
    ['no remedy', { ...EXPECTED, firstRemedy: null }, 'first remedy: expected null, got jiggle'],
  ])('of which %s was expected says so', async (_, expected, says) => {
    expect(await compareDemo(await recorded(expected), LOADED)).toEqual([says]);
  });

  it('says every difference at once', async () => {
    const expected = { verdict: { kind: 'open', cause: 'x' }, firstRemedy: 'y' };
    expect(await compareDemo(await recorded(expected), LOADED)).toHaveLength(3);
  });

  it('says where the ticket has changed by one letter', async () => {
    const folder = await recorded();
    appendFileSync(join(folder, 'ticket.md'), '.');
    expect(await compareDemo(folder, LOADED)).toEqual(['the ticket differs from ticket.md']);
  });

  it('says where it belongs to another rule base', async () => {
    const folder = await recorded();
    const other = { rules: TINY, digest: 'e'.repeat(64) };
    expect(await compareDemo(folder, other)).toEqual([
      `the record belongs to rule base ${DIGEST.slice(0, 12)}`,
    ]);
  });

  it('says where an event does not fit, and where a line is cut off', async () => {
    const folder = await recorded();
    const record = join(folder, 'record.jsonl');
    const whole = readFileSync(record, 'utf8');
    const stray = { at: CALLER.opened, type: 'answered', question: 'toaster', answer: true, origin: 'said' };
    writeFileSync(record, `${whole}${JSON.stringify(stray)}\n`);
    expect(await compareDemo(folder, LOADED)).toEqual([expect.stringContaining('no question "toaster"')]);
    writeFileSync(record, `${whole}{"at":"2026`);
    expect(await compareDemo(folder, LOADED)).toEqual([
      expect.stringMatching(/^line \d+ of record.jsonl is cut off$/),
    ]);
  });
});
