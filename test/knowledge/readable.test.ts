import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readArticles } from '../../src/files/load-articles.js';
import type { Question } from '../../src/rulebase/records.js';
import { gradeOf, proseOf } from './readable.js';

describe('the grade of prose (Kincaid et al. 1975)', () => {
  // Counted by hand: 13 words and 26 syllables in the first (Aus-tra-li-an, rep-til-i-an).
  test.each([
    [
      'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.',
      0.39 * 13 + 11.8 * (26 / 13) - 15.59,
    ],
    ['The cat sat on the mat.', 0.39 * 6 + 11.8 - 15.59],
    ['The cat sat. The dog ran. Go to 10.77.5.10/24 now.', 0.39 * 3 + 11.8 - 15.59],
  ])('%s', (text, grade) => {
    expect(gradeOf([text])).toBeCloseTo(grade, 1);
  });

  test('leaves headings, code, tables and sources out, and takes each step as a sentence', () => {
    const page =
      '# Considerable complexity\n\nThe cat `necessarily` sat.\n\n- A dog ran\n- It went\n\n| particularly |\n|-|\n| x |\n\n```\nordinarily\n```\n\n## Sources\n\nInternational Organisation';
    expect(proseOf(page)).toEqual(['The cat   sat.', 'A dog ran', 'It went']);
    expect(gradeOf(['A dog ran', 'It went'])).toBeCloseTo(gradeOf(['A dog ran. It went.']), 10);
  });
});

/** What reads harder than it may, hardest first. */
function hard(texts: readonly (readonly [string, readonly string[]])[], most: number): readonly string[] {
  return texts
    .map(([name, prose]) => [name, gradeOf(prose)] as const)
    .filter(([, grade]) => grade > most)
    .sort((a, b) => b[1] - a[1])
    .map(([name, grade]) => `${grade.toFixed(1)} ${name}`);
}

test('no article or how-to reads above grade 9', () => {
  const articles = existsSync('knowledge') ? readArticles('knowledge') : [];
  const pages = articles.filter(({ file }) => file.endsWith('.md'));
  expect(
    hard(
      pages.map(({ file, text }) => [file, proseOf(text)]),
      9,
    ),
  ).toEqual([]);
});

test('no question is asked in words above grade 7', () => {
  const files = readdirSync('rules/questions', { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.json'),
  );
  expect(files.length).toBeGreaterThan(50);
  const prompts = files.map((file): readonly [string, readonly string[]] => {
    const { prompt }: Question = JSON.parse(readFileSync(join('rules/questions', file), 'utf8'));
    return [`${file}: ${prompt}`, [prompt]];
  });
  expect(hard(prompts, 7)).toEqual([]);
});

test('what reads too hard is named', () => {
  expect(
    hard(
      [
        ['x', ['Considerable complexity necessitates circumspection.']],
        ['y', ['It is lit.']],
      ],
      9,
    ),
  ).toEqual([expect.stringMatching(/^\d+\.\d x$/)]);
});
