import { conflicts } from '../findings/contradictions.js';
import { defectsOf } from '../findings/defects.js';
import type { Facts } from '../findings/fact.js';
import { type Filling, fill, inWords, say } from '../messages/say.js';
import type { Situation } from '../steps/situation.js';
import type { DefectReport, Diagnosis, Works } from './diagnosis.js';
import { sumsOf } from './plan.js';

/** The defects, their sentences filled and their sums in words. */
export function defectReports({ rules, answers, settled }: Situation): readonly DefectReport[] {
  return defectsOf(rules, answers, settled).map(({ finding, grade, says, cause, lines }) => ({
    finding,
    grade,
    says: fill(says, fillingFrom(settled.facts)),
    ...(cause === undefined ? {} : { cause }),
    lines: lines.map(inWords),
  }));
}

function fillingFrom(facts: Facts): Filling {
  return Object.fromEntries(
    [...facts].map(([id, { value }]) => [id, Array.isArray(value) ? value.join(', ') : String(value)]),
  );
}

/** What was seen to work. */
export function worksOf({ rules, settled }: Situation): readonly Works[] {
  return rules.findings.flatMap((finding) => {
    const known = settled.findings.get(finding.id);
    const value = known && finding.values[known.value];
    if (!value?.clears || value.clears.length === 0) return [];
    return [
      {
        finding: finding.id,
        says: say('diagnosis.shows', { title: finding.title, value: value.title }),
        clears: value.clears,
      },
    ];
  });
}

/** Checks that say nothing because of how they were made. */
export function spoiltChecks({ rules, settled }: Situation): Diagnosis['spoilt'] {
  return settled.testerFaults.flatMap((id) => {
    const fault = rules['tester-faults'].find((one) => one.id === id);
    return fault
      ? [{ fault: id, title: fault.title, help: [...fault.help, ...sumsOf({ settled }, fault)] }]
      : [];
  });
}

/** Answers that cannot all be right. */
export function conflictReports({ rules, settled }: Situation): Diagnosis['conflicts'] {
  return conflicts(rules, settled).map(({ id, between, says }) => ({
    id,
    says: typeof says === 'string' ? says : inWords(says),
    between,
  }));
}
