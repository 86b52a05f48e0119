import type { Finding, RuleBase } from '../rulebase/records.js';
import type { Settled } from './settle.js';

/**
 * Whether this finding says nothing at present. While the picture of a fault that comes and goes is there, all
 * that is seen at this moment is seen in the fault's absence: it tells what works, not what takes the picture away.
 */
export function isSilent({ manifest }: RuleBase, settled: Settled, finding: Finding): boolean {
  const { silence } = manifest;
  if (finding.now !== true || silence === undefined) return false;
  return settled.findings.get(silence.finding)?.value === silence.value;
}
