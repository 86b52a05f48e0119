import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clean } from '../../src/ticket/clean.js';
import { escapeText, LONGEST } from '../../src/ticket/escape.js';
import { HOSTILE, hostileText } from './hostile.js';
import { commonmarkShape, commonmarkText, gfmShape, gfmTables, gfmText } from './read-markdown.js';

const PLAIN = ['document', 'paragraph'];

/** What people are to read. A space on both sides of the at sign of an e-mail address is ours. */
function shown(text: string): string {
  return clean(text).replace(/(?<=[A-Za-z0-9.+_-])@(?=[A-Za-z0-9][A-Za-z0-9_-]*\.)/g, ' @ ');
}

function isOnlyText(text: string): void {
  const escaped = escapeText(text);
  if (escaped === '') return;
  expect(commonmarkShape(escaped)).toEqual(PLAIN);
  expect(gfmShape(escaped)).toEqual(['paragraph']);
  expect(commonmarkText(escaped)).toBe(shown(text));
  expect(gfmText(escaped)).toBe(shown(text));
}

describe('typed text is text and nothing else, and reads as it was typed', () => {
  test.each(HOSTILE)('%j', isOnlyText);

  test('whatever is put together from such pieces', () => {
    fc.assert(fc.property(hostileText, isOnlyText), { numRuns: 2000 });
  });
});

test('a cell of a table holds whatever was typed, and stays one cell (GFM 0.29, section 4.10)', () => {
  fc.assert(
    fc.property(hostileText, (text) => {
      const tables = gfmTables(`| a | b |\n| --- | --- |\n| ${escapeText(text)} | end |`);
      expect(tables).toHaveLength(1);
      expect(tables[0]).toHaveLength(2);
      expect(tables[0]?.[1]).toHaveLength(2);
      expect(tables[0]?.[1]?.[1]).toBe('end');
    }),
    { numRuns: 1000 },
  );
});

test('in a heading it reads as it was typed, hashes at both ends included (CommonMark 0.31.2, section 4.2)', () => {
  const inHeading = (text: string): void => {
    expect(commonmarkText(`# ${escapeText(text)}`)).toBe(shown(text));
  };
  for (const text of ['# Heading #', '##', '# # #', 'a ##']) inHeading(text);
  fc.assert(fc.property(hostileText, inHeading), { numRuns: 500 });
});

test('ordinary text needs no backslashes', () => {
  const text =
    "It says: can't connect (code 403) - 172.23.40.57/24, 87 %, front_gate, a < b, #2, R & D, Wi-Fi!";
  expect(escapeText(text)).toBe(text);
});

test('no e-mail address is left for GFM to link, which looks for them after the backslashes', () => {
  expect(escapeText('mailto:ann@mail.example')).toBe('mailto:ann @ mail.example');
  expect(escapeText('xxxx@xxxx')).toBe('xxxx@xxxx');
});

test('a text of 2,000 characters stands whole, a longer one is cut and says by how much', () => {
  const whole = 'x'.repeat(LONGEST);
  expect(LONGEST).toBe(2000);
  expect(escapeText(whole)).toBe(whole);
  expect(escapeText(`${whole}yyy`)).toBe(
    `${whole} … (cut here; characters left out: 3. The call record keeps the whole text.)`,
  );
});

test('a cut never halves a character', () => {
  const cut = escapeText('😀'.repeat(LONGEST + 5));
  expect(cut).toContain('characters left out: 5.');
  expect(cut).not.toMatch(/\p{Cs}/u);
});
