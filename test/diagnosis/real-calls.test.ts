import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { advance, openCall } from '../../src/call/call.js';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import { asJson } from '../../src/cli/commands/diagnose.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { misfits } from './validator.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;
const names = readdirSync('transcripts-demo', { withFileTypes: true }).flatMap((one) =>
  one.isDirectory() ? [one.name] : [],
);

describe('a whole call under the real rule base', () => {
  it.each(names)('fits the published schema after every event: %s', async (name) => {
    const script: Script = JSON.parse(readFileSync(join('transcripts-demo', name, 'caller.json'), 'utf8'));
    const { header, events } = await playScript(rules, digest, script, name);
    let call = await openCall(rules, digest, header);
    for (const event of events) {
      const next = await advance(call, event);
      if (!next.ok) throw new Error(next.problem.id);
      call = next.value;
      expect(misfits(asJson(call))).toEqual([]);
    }
    expect(call.state.closed).toBeDefined();
  });
});
