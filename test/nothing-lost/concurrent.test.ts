import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { VERSION } from '../../src/call/version.js';
import { readRecord } from '../../src/files/record.js';
import { CALLERS, folderWithHolder, hold } from './children.js';

let folder = '';
let holder = '';
beforeAll(async () => {
  ({ folder, holder } = await folderWithHolder());
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('calls held at the same time in one folder', () => {
  it('keep to their own records, and leave no lock behind', async () => {
    const calls = CALLERS.slice(0, 6).map((caller, at) => {
      const record = join(folder, `call-${at}.jsonl`);
      return { record, id: `at-once-${at}`, holding: hold(holder, caller, record, `at-once-${at}`) };
    });
    await Promise.all(calls.map(({ holding }) => holding.ended));
    for (const { record, id, holding } of calls) {
      const { header, events, torn } = readRecord(record, VERSION);
      expect(header.id).toBe(id);
      expect(torn).toBeUndefined();
      expect(events).toEqual(
        holding
          .said()
          .slice(1)
          .map((line) => JSON.parse(line)),
      );
      expect(events.at(-1)?.type).toBe('closed');
    }
    expect(readdirSync(folder).filter((name) => name.endsWith('.lock'))).toEqual([]);
  });

  it('do not share a record: the second is refused, the first goes on', async () => {
    const record = join(folder, 'shared.jsonl');
    const caller = CALLERS[0] ?? '';
    let second: ReturnType<typeof hold> | undefined;
    const first = hold(holder, caller, record, 'first', () => {
      second ??= hold(holder, caller, record, 'second');
    });
    await first.ended;
    await second?.ended;
    expect(second?.child.exitCode).not.toBe(0);
    expect(second?.said()).toEqual([]);
    expect(readRecord(record, VERSION).header.id).toBe('first');
    const last = readFileSync(record, 'utf8').trim().split('\n').at(-1) ?? '';
    expect(JSON.parse(last).type).toBe('closed');
  });
});
