import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { faultLine, packRules } from '../../src/build/pack-rules.js';
import { readArticles } from '../../src/files/load-articles.js';
import { checkArticles } from '../../src/knowledge/check-articles.js';
import { isError } from '../../src/rulebase/fault.js';

test('nothing is wrong with the articles of this repository', async () => {
  const { built } = await packRules('rules');
  const articles = existsSync('knowledge') ? readArticles('knowledge') : [];
  const faults = checkArticles(JSON.parse(built?.text ?? ''), articles);
  expect(faults.filter(isError).map(faultLine)).toEqual([]);
});

test('the build brings every article along, byte for byte', () => {
  const articles = existsSync('knowledge') ? readArticles('knowledge') : [];
  for (const { file } of articles) {
    expect(readFileSync(`dist/knowledge/${file}`, 'utf8')).toBe(readFileSync(`knowledge/${file}`, 'utf8'));
  }
});
