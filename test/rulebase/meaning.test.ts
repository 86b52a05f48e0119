import { describe, expect, it } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import { type Broken, faultsAfter, inShort } from './broken.js';
import { BROKEN_LINKS } from './broken-links.js';
import { BROKEN_QUESTIONS } from './broken-questions.js';
import { BROKEN_SUMS } from './broken-sums.js';
import { BROKEN_TESTS } from './broken-tests.js';

describe('the meaning of records', () => {
  it('is right for the small rule base', () => {
    expect(faultsAfter({ changes: [] })).toEqual([]);
  });

  const table: readonly Broken[] = [...BROKEN_LINKS, ...BROKEN_TESTS, ...BROKEN_SUMS, ...BROKEN_QUESTIONS];
  it.each(table)('reports $name, and nothing else', (one) => {
    const faults = faultsAfter(one);
    expect(faults.map(inShort)).toEqual([...one.faults].sort());
    for (const { says } of faults) expect(inWords(says)).not.toMatch(/undefined|\{|NaN/);
  });

  it('names the ring of findings that rest on each other', () => {
    const ring = BROKEN_SUMS.find(({ name }) => name === 'findings that rest on each other');
    const [fault] = faultsAfter(ring ?? { changes: [] });
    expect(fault?.says.with?.cycle).toBe('phone-side -> sign-of-life -> phone-side');
  });

  it('says which word was probably meant', () => {
    const at = '/mends/0/chance';
    const [fault] = faultsAfter({
      changes: [{ file: 'remedies/power/plug-in-and-sign-in.json', at, value: 'mosty' }],
    });
    expect(fault?.says).toEqual({
      id: 'rules.unknown-name-near',
      with: { found: '"mosty"', near: 'mostly' },
    });
  });

  it('reports faults of several files at once', () => {
    const faults = faultsAfter({
      changes: [
        { file: 'causes/power/supply-off.json', at: '/stage', value: 'roof' },
        { file: 'cautions/mains.json', at: '/title', value: '' },
        { file: 'facts/camera-address-kind.json', at: '/sum', value: 'wizardry' },
      ],
    });
    expect(faults.map(inShort)).toEqual([
      'error causes/power/supply-off.json /stage rules.no-such-stage',
      'error causes/power/supply-off.json /stage rules.stage-not-folder',
      'error cautions/mains.json /title rules.wrong-form',
      'error facts/camera-address-kind.json /sum rules.no-such-sum',
    ]);
  });
});
