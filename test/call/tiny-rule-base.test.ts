import { describe, expect, it } from 'vitest';
import { SUM_NAMES, TOPIC_INPUTS } from '../../src/findings/sums.js';
import { OBSERVATION_SHAPES } from '../../src/intake/observations.js';
import { assembleTexts } from '../../src/rulebase/assemble.js';
import { fileOf } from '../../src/rulebase/layout.js';
import { KINDS } from '../../src/rulebase/records.js';
import { readSchemas } from '../rulebase/small-rule-base.js';
import { TINY } from './tiny-rule-base.js';

describe('the rule base of these tests', () => {
  it('has no fault', () => {
    const records = KINDS.flatMap((kind) =>
      TINY[kind].map((record) => ({
        file: fileOf(
          kind,
          record.id,
          'stage' in record && typeof record.stage === 'string' ? record.stage : '',
        ),
        text: JSON.stringify(record),
      })),
    );
    const files = [{ file: 'manifest.json', text: JSON.stringify(TINY.manifest) }, ...records];
    const { faults, rulebase } = assembleTexts(files, readSchemas(), {
      sums: SUM_NAMES,
      topics: TOPIC_INPUTS,
      observations: OBSERVATION_SHAPES,
    });
    expect(faults.filter(({ grade }) => grade === 'error')).toEqual([]);
    expect(rulebase).toEqual(TINY);
  });
});
