import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BrokenSite, folded, seenAt, unfolded } from './remembered.js';

const said = (value: string) => ({ kind: 'value', value }) as const;
const site = (sees: BrokenSite['sees']): BrokenSite => ({
  causes: ['patch-lead'],
  parts: [['reseat-lead']],
  sees,
});

describe('what is written down of the lab', () => {
  it('says once what most sites say', () => {
    const { usual, sites } = folded({
      one: site({ light: said('lit') }),
      other: site({ light: said('lit') }),
      third: site({ light: said('dark') }),
    });
    expect(usual).toEqual({ light: said('lit') });
    expect(sites.one?.sees).toEqual({});
    expect(sites.third?.sees).toEqual({ light: said('dark') });
  });

  it('loses nothing by that', () => {
    const answers = fc.dictionary(fc.constantFrom('a', 'b', 'c'), fc.constantFrom('x', 'y').map(said), {
      minKeys: 3,
      maxKeys: 3,
    });
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('one', 'two', 'three'), answers), (all) => {
        const sites = Object.fromEntries(Object.entries(all).map(([id, sees]) => [id, site({ ...sees })]));
        expect(unfolded(folded(sites))).toEqual(sites);
      }),
    );
  });

  it('knows nothing of a question that came later', () => {
    const known = folded({ one: site({ light: said('lit') }) });
    expect(seenAt(known, 'one', 'light')).toEqual(said('lit'));
    expect(seenAt(known, 'one', 'asked-since')).toBeUndefined();
  });
});
