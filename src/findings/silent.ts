import type { Finding, RuleBase } from '../rulebase/records.js';
import type { Settled } from './settle.js';

/** Whether it is known that a fault which comes and goes is away: the picture is there at the time of the call. */
export function isAway({ manifest: { silence } }: RuleBase, settled: Settled): boolean {
  return silence !== undefined && settled.findings.get(silence.finding)?.value === silence.value;
}

/**
 * Whether this finding says nothing at present. While the picture of a fault that comes and goes is there, all
 * that is seen at this moment is seen in the fault's absence: it tells what works, not what takes the picture away.
 */
export function isSilent(rules: RuleBase, settled: Settled, finding: Finding): boolean {
  return finding.now === true && isAway(rules, settled);
}
