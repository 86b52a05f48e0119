import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readArticle } from '../../src/knowledge/article.js';
import { linkedFile, placeOf } from '../../src/knowledge/place.js';
import { partsOf } from '../../src/knowledge/plain.js';
import { readPage } from '../../src/knowledge/read-page.js';
import { LEAD } from './an-article.js';
import { hostilePages } from './hostile-pages.js';

test('an article is taken apart at its headings', () => {
  const { title, opening, sections } = readArticle(LEAD);
  expect(title).toBe('Lead out');
  expect(opening).toEqual([]);
  expect(sections.map(({ heading, line }) => `${line} ${heading}`)).toEqual(
    LEAD.split('\n').flatMap((line, at) => (line.startsWith('## ') ? [`${at + 1} ${line.slice(3)}`] : [])),
  );
});

describe('the line of every part', () => {
  test('is the one it stands in, deep in lists, quotes and tables too', () => {
    const page = [
      ...['# W1', '', 'W3 a', 'W4 **b', 'W5** `c`', '', '- W7', '  - W8', '    W9', '- W10', ''],
      ...['> W12', '>', '> 1. W14', '>    W15', '', '| W17 |', '|-|', '| W19 |', '| W20 |', '', '', 'W23'],
    ].join('\r\n');
    const found = partsOf(readPage(page)).flatMap((part) => {
      if (part.kind !== 'words') return [];
      return part.text
        .split('\n')
        .flatMap((text, down) => (/W\d+/.exec(text) ?? []).map((word) => `${word} ${part.line + down}`));
    });
    expect(found).toEqual([1, 3, 4, 5, 7, 8, 9, 10, 12, 14, 15, 17, 19, 20, 23].map((n) => `W${n} ${n}`));
  });

  test('is never outside the page', () => {
    fc.assert(
      fc.property(hostilePages, (page) => {
        const last = page.replace(/\r\n?/g, '\n').split('\n').length;
        for (const { line } of partsOf(readPage(page))) {
          expect(line).toBeGreaterThan(0);
          expect(line).toBeLessThanOrEqual(last);
        }
      }),
    );
  });
});

describe('the places of files', () => {
  test.each([
    ['causes/link/lead-out.md', { kind: 'cause', stage: 'link', id: 'lead-out' }],
    ['how-to/plug.md', { kind: 'how-to', id: 'plug' }],
    ['pictures/lead.svg', { kind: 'picture', id: 'lead' }],
    ['causes/lead-out.md', undefined],
    ['how-to/deep/plug.md', undefined],
    ['how-to/Plug.md', undefined],
    ['pictures/lead.png', undefined],
    ['README.md', undefined],
  ])('%s', (file, place) => {
    expect(placeOf(file)).toEqual(place);
  });

  test.each([
    ['../power/x.md', 'causes/power/x.md'],
    ['x.md', 'causes/link/x.md'],
    ['./x.md#a', 'causes/link/x.md'],
    ['#a', 'causes/link/lead-out.md'],
    ['../../how-to/x.md', 'how-to/x.md'],
    ['../../../x.md', undefined],
  ])('a link to %s leads to %s', (to, file) => {
    expect(linkedFile('causes/link/lead-out.md', to)).toBe(file);
  });
});
