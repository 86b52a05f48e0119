import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { columnsOf } from '../../../src/build/page/columns-of.js';
import { packedRuleText, pageRules } from '../../../src/build/page/page-rules.js';
import { canonicalJson } from '../../../src/rulebase/canonical.js';
import { type Json, readColumns } from '../../../src/web/columns.js';

const RULES = JSON.parse(readFileSync(new URL('../../../dist/rules.json', import.meta.url), 'utf8'));

/** JSON by its own words: -0 is 0 there, and `__proto__` is no name that a record may have. */
const anyJson = fc
  .jsonValue({ maxDepth: 5 })
  .map((value) => JSON.stringify(value))
  .filter((text) => !text.includes('__proto__'))
  .map((text): Json => JSON.parse(text));

test('any value comes back from its columns as it was', () => {
  fc.assert(
    fc.property(anyJson, (value) => {
      expect(canonicalJson(readColumns(columnsOf(value)))).toBe(canonicalJson(value));
    }),
    { numRuns: 500 },
  );
});

test('with every object taken for a map, any value comes back as it was', () => {
  const layout = { isMap: () => true, inside: () => 'one place for all' };
  fc.assert(
    fc.property(anyJson, (value) => {
      expect(canonicalJson(readColumns(columnsOf(value, layout)))).toBe(canonicalJson(value));
    }),
    { numRuns: 500 },
  );
});

test('what would end the block of HTML that it stands in is written otherwise', () => {
  const value = ['</script><script>', '<!-- a b', 'a\tb', 'a\nb', 'a\\b', 'a\r\nb c', 'a\0 b'];
  const text = columnsOf(value);
  expect(text).not.toMatch(/[<\r\0]/);
  expect(readColumns(text)).toEqual(value);
});

test('a record with the name that would change what it is made of is refused', () => {
  expect(() => columnsOf(JSON.parse('{"__proto__":{"a":1}}'))).toThrow(SyntaxError);
});

test('the rule base comes back as it was, but for what only its authors read', () => {
  const text = packedRuleText(RULES);
  expect(canonicalJson(readColumns(text))).toBe(canonicalJson(pageRules(RULES)));
});

test('the page has every record but the retired ones, and leaves out three fields of them', () => {
  const kept = pageRules(RULES);
  const unread = ['source', 'because', 'alsoExplainedBy'];
  const without = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(without);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).flatMap(([name, inner]) =>
        unread.includes(name) ? [] : [[name, without(inner)]],
      ),
    );
  };
  expect(kept).toEqual({ ...(without(RULES) as object), retired: [] });
});

test('cut anywhere, it throws and does not give a part of a rule base', () => {
  const text = packedRuleText(RULES);
  for (let left = 0; left < text.length; left += 4999)
    expect(() => readColumns(text.slice(0, left))).toThrow();
});
