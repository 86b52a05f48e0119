import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readArticle } from '../../src/knowledge/article.js';
import { blocksText, terminalText } from '../../src/knowledge/terminal.js';
import { LEAD } from './an-article.js';
import { columnsOf, hostilePages } from './hostile-pages.js';

describe('an article on the terminal', () => {
  test('has headings with a line under them, steps with hanging lines, and pages named after links', () => {
    const page = [
      '# Lead out',
      'One **two** `ping 10.77.5.1` [other](../power/supply-off.md) [away](https://a.example).',
      '## Steps',
      '9. First, a step that does not fit on one line here.\n10. > "Say this."',
      '### Windows',
      '- a\n- b\n  - c',
      '```\nping  -n 20\n```',
      '![A lead](../pictures/lead.svg)',
    ].join('\n\n');
    expect(terminalText(page, { width: 40 })).toBe(
      [
        ...['Lead out', '========', ''],
        ...['One two `ping 10.77.5.1` other', '[supply-off] away.', ''],
        ...['Steps', '-----', ''],
        ...['9. First, a step that does not fit on', '   one line here.', '10. > "Say this."', ''],
        ...['-- Windows', '', '- a', '- b', '  - c', '', '    ping  -n 20', '', '[Picture: A lead]'],
      ].join('\n'),
    );
  });

  test('has tables in columns where they fit, else cell by cell', () => {
    const table = '| Class | Watts at the camera |\n|-|-|\n| 1 | 3.84 |\n| 3 | 12.95 |';
    expect(terminalText(table)).toBe(
      'Class  Watts at the camera\n-----  -------------------\n1      3.84\n3      12.95',
    );
    // Thirty letters of two columns each would stand beside thirty more if they were counted as one.
    const wide = `| ${'\u4e00'.repeat(30)} | b |\n|-|-|\n| 1 | ${'\u4e00'.repeat(30)} |`;
    expect(terminalText(wide).split('\n')[0]).toBe(`${'\u4e00'.repeat(30)}: 1`);
    expect(terminalText(table, { width: 20 })).toBe(
      'Class: 1\nWatts at the camera:\n3.84\n\nClass: 3\nWatts at the camera:\n12.95',
    );
  });

  test('keeps every word of a real article', () => {
    const words = (text: string) => text.match(/[A-Za-z]+/g);
    const marks = LEAD.replace(/\]\([^)]*\/([a-z-]+)\.md\)/g, ' $1').replace(
      /!\[(.*?)\]\(.*?\)/,
      'Picture $1',
    );
    expect(words(terminalText(LEAD))).toEqual(words(marks));
  });

  test('can be shown section by section', () => {
    const [, sure] = readArticle(LEAD).sections;
    expect(blocksText(sure?.blocks ?? [])).toBe('The light beside the socket is dark.');
  });

  test('is coloured only by the paint it is given, and says the same without', () => {
    const paint = (style: string, text: string) => `{${style}}${text}{/}`;
    expect(terminalText('# A\n\nb **c** `d`', { paint })).toBe('{bold}A{/}\n=\n\nb {bold}c{/} {cyan}`d`{/}');
  });

  test('leaves HTML out, and shows what is written to be read', () => {
    expect(terminalText('a <b>b</b> &lt;c&gt; `<d>`\n\n<div>e</div>')).toBe('a b <c> `<d>`');
  });
});

describe('whatever stands in a page', () => {
  test('no line is wider than asked for, from 20 to 80 columns', () => {
    fc.assert(
      fc.property(hostilePages, fc.integer({ min: -5, max: 200 }), (page, width) => {
        const widest = Math.max(20, Math.min(80, width));
        for (const line of terminalText(page, { width }).split('\n')) {
          expect(columnsOf(line), line).toBeLessThanOrEqual(widest);
        }
      }),
      { numRuns: 400 },
    );
  });

  test('no control or direction character comes through, nor half a character', () => {
    fc.assert(
      fc.property(hostilePages, (page) => {
        expect(terminalText(page)).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
      }),
      { numRuns: 400 },
    );
  });
});
