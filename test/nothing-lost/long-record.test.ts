import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { replay } from '../../src/call/call.js';
import { type CallEvent, type CallHeader, RECORD_FORMAT } from '../../src/call/events.js';
import { VERSION } from '../../src/call/version.js';
import { readRecord } from '../../src/files/record.js';
import { yardsAwaited } from '../timing/yards.js';

const rules = JSON.parse(readFileSync('dist/rules.json', 'utf8'));
const digest = readFileSync('dist/rules.digest', 'utf8').trim();
const OPENED = '2026-11-25T09:00:00.000Z';

it('opens a record of ten thousand events in under a second', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-long-'));
  const path = join(folder, 'long.jsonl');
  const header: CallHeader = {
    record: RECORD_FORMAT,
    id: 'long',
    opened: OPENED,
    whydark: VERSION,
    rules: { version: rules.manifest.version, digest },
    role: 'desk',
  };
  const choices: readonly (readonly [string, string])[] = [
    ['camera-type', 'wired'],
    ['which-cameras', 'one'],
    ['exact-screen', 'offline'],
    ['port-light', 'lit'],
    ['port-light', 'dark'],
  ];
  const events = Array.from({ length: 10_000 }, (_, at): CallEvent => {
    const [question, answer] = choices[at % choices.length] ?? ['camera-type', 'wired'];
    if (at % 50 === 7) return { at: OPENED, type: 'noted', text: `note ${at}` };
    if (at % 50 === 9) return { at: OPENED, type: 'undone' };
    return { at: OPENED, type: 'answered', question, answer, origin: 'said' };
  });
  writeFileSync(path, [header, ...events].map((line) => `${JSON.stringify(line)}\n`).join(''));
  const open = async (): Promise<void> => {
    const text = readRecord(path, VERSION);
    const opened = await replay(rules, digest, text.header, text.events);
    expect(opened.ok && opened.value.state.history.length).toBeGreaterThan(9000);
  };
  await open();
  // Fifty yards are a second, or less, where this was written; 12 to 14 were measured.
  const yards = await yardsAwaited(open, 50);
  rmSync(folder, { recursive: true });
  expect(yards).toBeLessThan(50);
});
