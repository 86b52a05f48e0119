import { describe, expect, it } from 'vitest';
import { sourcesOf } from '../../src/rulebase/sources.js';
import { cause, ruleBase } from '../ranking/literals.js';

describe('what a rule base rests on', () => {
  it('lists each published place once, with its records, and counts the rest', () => {
    const place = { title: 'RFC 3927', section: '2.1' };
    const published = { ...place, opened: 'text' } as const;
    const found = sourcesOf(
      ruleBase({
        causes: [
          cause('b', { source: published }),
          cause('a', { source: published }),
          cause('c', { source: { title: 'RFC 950', section: 'page 5, from memory' } }),
          cause('d'),
          cause('e', { source: 'common practice, no source' }),
        ],
      }),
    );
    expect(found).toEqual({
      published: [
        { ...place, standing: 'opened', records: ['causes/a', 'causes/b'] },
        { title: 'RFC 950', section: 'page 5, from memory', standing: 'from-memory', records: ['causes/c'] },
      ],
      practice: 1,
      judged: 1,
    });
  });
});
