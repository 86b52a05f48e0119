import { modelOf } from '../../../src/ranking/model.js';
import { posterior } from '../../../src/ranking/posterior.js';
import type { PlaceId, RuleBase } from '../../../src/rulebase/records.js';
import type { Situation } from '../../../src/steps/situation.js';

/** A call that begins: nothing asked, nothing tried, every hand and all the kit there, somebody at `here`. */
export function startOf(rules: RuleBase, here: PlaceId): Situation {
  const model = modelOf(rules);
  return {
    rules,
    model,
    answers: new Map(),
    settled: { facts: new Map(), findings: new Map(), testerFaults: [] },
    evidence: [],
    probabilities: posterior(model, []),
    here,
    hands: new Set(['anyone', 'owner', 'installer', 'help-desk']),
    kit: new Set(rules.manifest.kit.map(({ id }) => id)),
    passed: new Set(),
    tried: new Set(),
    askedBefore: new Set(),
    revised: new Set(),
    left: new Set(),
  };
}

/** The same rule base where nobody errs, everybody can tell, and no subject has a price. */
export function withoutNoise({ manifest, ...records }: RuleBase): RuleBase {
  const { silence: _, ...rest } = manifest;
  const said = { choice: 0, 'yes-no': 0, several: 0, address: 0, mask: 0, moment: 0, number: 0, text: 0 };
  const reliability = { said, agreed: 0, pasted: 0, read: 0, disputed: 0 };
  return { ...records, manifest: { ...rest, reliability, cantTell: 0, subjectPrice: 0 } };
}
