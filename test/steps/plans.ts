import fc from 'fast-check';
import type { Manifest } from '../../src/rulebase/manifest.js';
import type { PlaceId } from '../../src/rulebase/records.js';
import type { Try } from '../../src/steps/repair-plan.js';
import { MANIFEST } from '../ranking/literals.js';

export const WALKED: readonly PlaceId[] = ['site', 'computer', 'cabinet', 'camera'];

/** A choice of remedies to make: chances, where one stands, what may be tried, what a visit costs. */
export interface Choice {
  readonly probabilities: readonly number[];
  readonly here: PlaceId;
  readonly tries: readonly Try[];
  readonly manifest: Manifest;
}

export function visitOf(minutes: number): Manifest {
  return { ...MANIFEST, visit: { labourMinutes: minutes, waitDays: 0, minutesPerDay: 0 } };
}

const CAUSES = 6;

/** Up to `most` remedies at places, each mending up to three causes, some less surely than others. */
export function choiceOf(most: number, least = 0): fc.Arbitrary<Choice> {
  const attempt = fc.record({
    place: fc.constantFrom('anywhere', ...WALKED),
    minutes: fc.integer({ min: 1, max: 40 }),
    mends: fc.uniqueArray(fc.tuple(fc.nat(CAUSES - 1), fc.constantFrom(...Object.values(MANIFEST.words))), {
      minLength: 1,
      maxLength: 3,
      selector: ([cause]) => cause,
    }),
  });
  return fc
    .record({
      weights: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: CAUSES, maxLength: CAUSES }),
      here: fc.constantFrom(...WALKED),
      attempts: fc.array(attempt, { minLength: least, maxLength: most }),
      visit: fc.integer({ min: 10, max: 400 }),
    })
    .map(({ weights, here, attempts, visit }) => {
      const whole = weights.reduce((sum, weight) => sum + weight, 0);
      return {
        probabilities: weights.map((weight) => weight / whole),
        here,
        tries: attempts.map((one, i) => ({ remedy: `r${i}`, ...one })),
        manifest: visitOf(visit),
      };
    });
}
