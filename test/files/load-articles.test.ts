import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { articleFiles, articlesBeside, builtArticles, readArticles } from '../../src/files/load-articles.js';

let root = '';
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'whydark-articles-'));
  mkdirSync(join(root, 'knowledge/causes/link'), { recursive: true });
  mkdirSync(join(root, 'knowledge/pictures'));
  mkdirSync(join(root, 'chunks'));
  writeFileSync(join(root, 'knowledge/pictures/lead.svg'), '<svg/>');
  writeFileSync(join(root, 'knowledge/causes/link/lead-out.md'), '# Lead out\n');
  writeFileSync(join(root, 'knowledge/.hidden.md'), '');
  symlinkSync(root, join(root, 'knowledge/round'));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

describe('the folder of the articles', () => {
  it('is read in order, hidden files and links left out; of pictures only that they are there', () => {
    expect(readArticles(join(root, 'knowledge'))).toEqual([
      { file: 'causes/link/lead-out.md', text: '# Lead out\n' },
      { file: 'pictures/lead.svg', text: '' },
    ]);
  });

  it('is missed in a sentence', () => {
    expect(() => articleFiles(join(root, 'none'))).toThrow(/articles are missing: there is no .*none/);
  });

  it('is found beside the bundle, above a chunk of it, and beside a rules folder', () => {
    const url = (file: string): string => pathToFileURL(join(root, file)).href;
    expect(builtArticles(url('whydark.js'))).toBe(join(root, 'knowledge'));
    expect(builtArticles(url('chunks/article.js'))).toBe(join(root, 'knowledge'));
    expect(articlesBeside(join(root, 'rules/'))).toBe(join(root, 'knowledge'));
  });
});
