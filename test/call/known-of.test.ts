import { describe, expect, it } from 'vitest';
import { hasChanged, knownOf } from '../../src/call/known-of.js';
import { remedy } from './tiny-records.js';

const fact = (value: string | number | readonly string[]) => ({ value, lines: [], basis: [] });

describe('what a remedy looks at', () => {
  const both = remedy('both', { x: 'half' }, [], {
    when: {
      any: [
        { fact: 'life', operator: 'equal', value: 'dark' },
        { fact: 'volts', operator: 'lessThan', value: 40 },
      ],
    },
    gate: { condition: { fact: 'kit', operator: 'contains', value: 'ladder' }, why: 'Because.' },
  });

  it('is what its condition and its gate mention, as far as it is known', () => {
    const facts = new Map([
      ['life', fact('dark')],
      ['kit', fact(['ladder'])],
      ['other', fact('x')],
    ]);
    expect(knownOf(both, facts)).toEqual(
      new Map([
        ['life', '"dark"'],
        ['kit', '["ladder"]'],
      ]),
    );
    expect(knownOf(remedy('none', { x: 'half' }, []), facts).size).toBe(0);
  });

  it.each<[string, Record<string, string>, Record<string, string>, boolean]>([
    ['the same', { life: 'dark' }, { life: 'dark' }, false],
    ['otherwise', { life: 'dark' }, { life: 'lit' }, true],
    ['otherwise in one of two', { life: 'dark', volts: '12' }, { life: 'dark', volts: '48' }, true],
    ['nothing yet, being asked anew', { life: 'dark' }, {}, false],
    ['something, where nothing was known then', { life: 'dark' }, { life: 'dark', volts: '12' }, false],
  ])('reads %s', (_, then, now, changed) => {
    expect(hasChanged(new Map(Object.entries(then)), new Map(Object.entries(now)))).toBe(changed);
  });
});
