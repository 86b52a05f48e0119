import { describe, expect, it } from 'vitest';
import { canonicalText } from '../../src/rulebase/canonical.js';
import { unpacked } from '../../src/rulebase/unpacked.js';
import { cause, finding, ruleBase } from '../ranking/literals.js';

describe('a packed rule base taken apart', () => {
  it('gives each record the file it would stand in', () => {
    const packed = canonicalText(
      ruleBase({ causes: [cause('out')], findings: [finding('light', 'look', { lit: 1 })] }),
    );
    expect(unpacked(packed).map(({ file }) => file)).toEqual([
      'manifest.json',
      'findings/power/light.json',
      'causes/power/out.json',
    ]);
  });

  it.each(['', 'no json', '[]', '3'])('leaves %j for the check to name', (text) => {
    expect(unpacked(text)).toEqual([{ file: 'manifest.json', text }]);
  });
});
