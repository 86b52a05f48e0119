import { checkRuleFolder } from '../../../src/files/load-rules.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');

/** The rule base as it stands in the folder. */
export const { rules, digest } = loaded;
