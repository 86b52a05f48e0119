import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareDemo } from '../../src/build/demo.js';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import { VERSION } from '../../src/call/version.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { readRecord } from '../../src/files/record.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');

const folders = readdirSync('transcripts-demo', { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => join('transcripts-demo', name));

describe('the recorded calls', () => {
  it('are there', () => {
    expect(folders.length).toBeGreaterThanOrEqual(3);
  });

  it.each(folders)('%s ends as was written down before it was held', async (folder) => {
    expect(await compareDemo(folder, loaded)).toEqual([]);
  });

  it.each(folders)('%s is what its caller gives today', async (folder) => {
    const script: Script = JSON.parse(readFileSync(join(folder, 'caller.json'), 'utf8'));
    const { header, events } = await playScript(loaded.rules, loaded.digest, script, basename(folder));
    const kept = readRecord(join(folder, 'record.jsonl'), VERSION);
    expect([header, ...events]).toEqual([kept.header, ...kept.events]);
  });

  it('the README shows parts of the first, and nothing else', () => {
    const [, shown = ''] = /```markdown\n([\s\S]*?)```/.exec(readFileSync('README.md', 'utf8')) ?? [];
    const whole = readFileSync('transcripts-demo/01-gateway-of-another-subnet/ticket.md', 'utf8').split('\n');
    const lines = shown.trimEnd().split('\n');
    expect(lines.length).toBeGreaterThan(20);
    let from = 0;
    for (const line of lines) {
      const at = whole.indexOf(line, from);
      expect(at, line).toBeGreaterThanOrEqual(from);
      from = at + 1;
    }
  });
});
