import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { advance, type Call, openCall, replay } from '../../src/call/call.js';
import { upThere } from '../../src/call/up-there.js';
import { VERSION } from '../../src/call/version.js';
import { readRecord } from '../../src/files/record.js';
import { loaded } from '../web/built.js';

const { rules, digest } = loaded();
const RECORD = 'transcripts-demo/18-gone-when-its-lamps-come-on/record.jsonl';

/** A recorded call just before a remedy was tried. */
async function justBefore(remedy: string): Promise<Call> {
  const { header, events } = readRecord(RECORD, VERSION);
  const at = events.findIndex((event) => event.type === 'tried' && event.remedy === remedy);
  const result = await replay(rules, digest, header, events.slice(0, at));
  if (!result.ok) throw new Error(result.problem.id);
  return result.value;
}

describe('before somebody goes up to the camera', () => {
  test('all that is to be done there is listed, the present step among it, with the ladder', async () => {
    const call = await justBefore('thicker-supply-lead');
    const there = upThere(call);
    expect(there?.climbs).toBe(true);
    expect(there?.try[0]).toBe(rules.remedies.find(({ id }) => id === 'thicker-supply-lead')?.title);
    expect(there?.bring).toContain('A ladder');
    const titles = [...rules.questions, ...rules.remedies]
      .filter(({ place }) => place === 'camera')
      .map(({ title }) => title);
    for (const title of [...(there?.see ?? []), ...(there?.try ?? [])]) expect(titles).toContain(title);
  });

  test('nothing is listed for a step that is elsewhere', async () => {
    expect(upThere(await justBefore('swap-adapter'))).toBeUndefined();
  });

  test('nothing is listed again for somebody who is up there', async () => {
    const call = await justBefore('thicker-supply-lead');
    const moved = { ...call, state: { ...call.state, here: 'camera' } };
    expect(upThere(moved)).toBeUndefined();
  });

  test('a fresh call has nothing to climb for', async () => {
    const header = JSON.parse(readFileSync(RECORD, 'utf8').split('\n')[0] ?? '');
    const call = await openCall(rules, digest, header);
    expect(upThere(call)).toBeUndefined();
    expect((await advance(call, { at: header.opened, type: 'undone' })).ok).toBe(false);
  });
});
