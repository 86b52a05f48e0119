import { readFileSync } from 'node:fs';
import type { RuleBase } from '../../src/rulebase/records.js';

/** The rule base that the build packed, as the page has it. */
export function loaded(): { readonly rules: RuleBase; readonly digest: string } {
  const dist = new URL('../../dist/', import.meta.url);
  return {
    rules: JSON.parse(readFileSync(new URL('rules.json', dist), 'utf8')),
    digest: readFileSync(new URL('rules.digest', dist), 'utf8').trim(),
  };
}
