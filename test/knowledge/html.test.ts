import { HtmlRenderer, Parser } from 'commonmark';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { htmlDocument, htmlOf } from '../../src/knowledge/html.js';
import { LEAD } from './an-article.js';
import { hostilePages } from './hostile-pages.js';

const inside = (markdown: string): string =>
  htmlOf(markdown)
    .replace(/^<article>\n/, '')
    .replace(/<\/article>\n$/, '');

/** Every tag and attribute that may be written at all. */
const TAG =
  /<(?:\/?(?:article|h[1-6]|p|ul|ol|li|blockquote|pre|code|table|thead|tbody|tr|th|td|strong|em|a)|hr|br|h[1-6] id="[a-z0-9-]+"|ol start="\d+"|th scope="col"|a href="(?:(?:\.\.?\/)*[a-z0-9/-]+\.(?:md|svg))?(?:#[a-z0-9-]+)?"|img src="(?:\.\.?\/)*[a-z0-9/-]+\.svg" alt="[^"<>]*")>/g;

describe('an article in HTML', () => {
  test('has headings with ids, lists, quotes, tables and pictures as what they are', () => {
    expect(inside('# Lead out\n\n## Steps\n\n## Steps\n\n3. a\n4. b\n\n> "c"')).toBe(
      '<h1 id="lead-out">Lead out</h1>\n<h2 id="steps">Steps</h2>\n<h2 id="steps-2">Steps</h2>\n' +
        '<ol start="3">\n<li>a</li>\n<li>b</li>\n</ol>\n<blockquote>\n<p>&quot;c&quot;</p>\n</blockquote>\n',
    );
    expect(inside('| a | b |\n|-|-|\n| 1 | `2` |')).toBe(
      '<table>\n<thead>\n<tr><th scope="col">a</th><th scope="col">b</th></tr>\n</thead>\n' +
        '<tbody>\n<tr><td>1</td><td><code>2</code></td></tr>\n</tbody>\n</table>\n',
    );
    expect(inside('![A "lead"](../pictures/lead.svg)')).toBe(
      '<p><img src="../pictures/lead.svg" alt="A &quot;lead&quot;"></p>\n',
    );
  });

  test.each([
    ['[a](../link/x.md)', '<a href="../link/x.md">a</a>'],
    ['[a](x.md#steps)', '<a href="x.md#steps">a</a>'],
    ['[a](#steps)', '<a href="#steps">a</a>'],
    ['[a](https://a.example)', 'a'],
    ['[a](//a.example/x.md)', 'a'],
    ['[a](/x.md)', 'a'],
    ['[a](javascript:alert%281%29)', 'a'],
    ['[a](data:text/html,x.md)', 'a'],
    ['<https://a.example>', 'https://a.example'],
    ['https://a.example', 'https://a.example'],
    ['![a](https://a.example/x.svg)', 'a'],
    ['a <i>b</i> c', 'a b c'],
  ])('%s becomes %s', (markdown, html) => {
    expect(inside(markdown)).toBe(`<p>${html}</p>\n`);
  });

  test('leads links where it is told to, but no foreign ones', () => {
    const to = (one: string) => (one.endsWith('.svg') ? undefined : `#${one}"`);
    expect(htmlOf('[a](x.md) ![b](y.svg) [c](http://z)', to)).toContain('<a href="#x.md&quot;">a</a> b c');
  });

  test('is a whole document with the title where one is wanted', () => {
    const html = htmlDocument(LEAD);
    expect(html).toMatch(/^<!doctype html>\n<html lang="en-GB">/);
    expect(html).toContain('<title>Lead out</title>');
    expect(html).toContain(htmlOf(LEAD));
  });
});

test('no tag comes through that is not ours, and no link that is not relative', () => {
  fc.assert(
    fc.property(hostilePages, (page) => {
      const rest = htmlOf(page).replace(TAG, '');
      expect(rest).not.toMatch(/[<>]/);
      expect(rest).not.toMatch(/(?![\n\t])[\p{Cc}\p{Cf}\p{Cs}]/u);
    }),
    { numRuns: 400 },
  );
});

describe('against the reference parser of CommonMark', () => {
  const reference = (markdown: string): string => new HtmlRenderer().render(new Parser().parse(markdown));
  /** Ids are ours, and so is the way of breaking lines between elements and of writing quotation marks. */
  const alike = (html: string): string =>
    html
      .replace(/ id="[^"]*"/g, '')
      .replace(/&quot;/g, '"')
      .replace(/&#39;/g, "'")
      .replace(/<br ?\/?>/g, '<br>')
      .replace(/<hr ?\/?>/g, '<hr>')
      .replace(/\s*(<\/?(?:h\d|p|ul|ol|li|blockquote|pre|hr)[^>]*>)\s*/g, '$1');
  const same = (markdown: string): void => {
    expect(alike(inside(markdown))).toBe(alike(reference(markdown)));
  };

  const word = fc.constantFrom(
    'lead',
    '`ping x`',
    '**firmly**',
    '*soft*',
    "can't",
    '"say"',
    '5 < 6',
    'a & b',
    '&amp;',
  );
  const text = fc.array(word, { minLength: 1, maxLength: 6 }).map((words) => words.join(' '));
  const part = fc.oneof(
    text,
    fc.tuple(text, text).map((lines) => lines.join('\n')),
    fc.tuple(fc.integer({ min: 1, max: 3 }), text).map(([level, words]) => `${'#'.repeat(level)} ${words}`),
    fc
      .array(text, { minLength: 1, maxLength: 3 })
      .map((items) => items.map((item) => `- ${item}`).join('\n')),
    fc
      .array(text, { minLength: 1, maxLength: 3 })
      .map((items) => items.map((one, i) => `${i + 1}. ${one}`).join('\n')),
    text.map((words) => `1. a\n\n   > ${words}\n\n2. b`),
    text.map((words) => `\`\`\`\n${words}\n  x\n\`\`\``),
  );

  test('pages in the manner of articles come out the same', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => same(parts.join('\n\n'))),
      { numRuns: 300 },
    );
  });

  test('so does an article, its picture and links aside', () => {
    same(LEAD.replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1'));
  });
});
