import { describe, expect, it } from 'vitest';
import { reviewByCalls } from '../../src/call/rehearsal/review-by-calls.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { inWords } from '../../src/messages/say.js';

const CALLS = 2000;

describe('the rule base in rehearsed calls', () => {
  it(`asks no question in vain and tries each remedy, in ${CALLS} of them`, async () => {
    const { loaded } = await checkRuleFolder('rules', 'rules/schema');
    if (!loaded) throw new Error('the rule base does not load');
    const faults = await reviewByCalls(loaded.rules, loaded.digest, CALLS);
    expect(faults.map(({ file, says }) => `${file}: ${inWords(says)}`)).toEqual([]);
  }, 600_000);
});
