import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAnswersFile } from '../../src/call/answers-file.js';
import { diagnosisOf, replay } from '../../src/call/call.js';
import { RECORD_FORMAT } from '../../src/call/events.js';
import { VERSION } from '../../src/call/version.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';

const AT = '2026-11-25T09:00:00.000Z';
const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;

const read = (name: string): unknown => JSON.parse(readFileSync(`test/answer-files/${name}.json`, 'utf8'));
const expected = Object.entries(read('expected') as Record<string, { readonly cause: string }>);

describe('answer files written by hand, by somebody who has not read the rule base', () => {
  it.each(expected)('%s gives the verdict a technician would', async (name, { cause }) => {
    const file = readAnswersFile(rules, read(name), AT);
    if (!file.ok) throw new Error(JSON.stringify(file.problems));
    const header = {
      record: RECORD_FORMAT,
      id: 'answers-file',
      opened: AT,
      whydark: VERSION,
      rules: { version: rules.manifest.version, digest },
      role: file.role,
    };
    const result = await replay(rules, digest, header, file.events, { opening: 'skipped' });
    if (!result.ok) throw new Error(result.problem.id);
    expect(diagnosisOf(result.value).verdict).toMatchObject({ kind: 'named', cause });
  });
});
