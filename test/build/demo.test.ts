import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareDemo } from '../../src/build/demo.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';

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
});
