import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../src/messages/say.js';
import { DEEPEST, jsonFault } from '../../src/rulebase/json-place.js';
import { parseFiles } from '../../src/rulebase/parse-files.js';

function faultOf(text: string) {
  return parseFiles([{ file: 'cautions/x.json', text }]).faults[0]?.says;
}

describe('reading the JSON of rule files', () => {
  it('gives what JSON.parse gives where there is no fault', () => {
    const parsed = parseFiles([{ file: 'a.json', text: '{"a": [1, -0.5e3, "\\u00e9", null]}' }]);
    expect(parsed).toEqual({ files: [{ file: 'a.json', json: { a: [1, -500, 'é', null] } }], faults: [] });
  });

  it.each([
    ['{\n  "a": 1,\n  "b" 2\n}', { line: 3, column: 7, found: '"2"' }],
    ['{"a": 1,}', { line: 1, column: 9, found: '"}"' }],
    ["{'a': 1}", { line: 1, column: 2, found: `"'"` }],
    ['{"a": 01}', { line: 1, column: 8, found: '"1"' }],
    ['[1] x', { line: 1, column: 5, found: '"x"' }],
    ['{"a": "x\ty"}', { line: 1, column: 9, found: String.raw`"\t"` }],
  ])('names line and column in %j', (text, place) => {
    expect(faultOf(text)).toEqual({ id: 'rules.not-json', with: place });
  });

  it('says where a file ends too early', () => {
    expect(faultOf('{"a": [1,\n')).toEqual({ id: 'rules.text-ends', with: { line: 2, column: 1 } });
    expect(faultOf('')).toEqual({ id: 'rules.text-ends', with: { line: 1, column: 1 } });
  });

  it('refuses a name given twice, which JSON.parse would let pass', () => {
    const says = faultOf('{"a": {"id": 1},\n "b": {"id": 1, "id": 2}}');
    expect(says).toEqual({ id: 'rules.name-twice', with: { name: '"id"', line: 2, column: 17 } });
    expect(faultOf('{"a": 1, "\\u0061": 2}')?.id).toBe('rules.name-twice');
  });

  it('refuses what is nested too deeply, however deep, in a sentence', () => {
    expect(jsonFault('['.repeat(DEEPEST) + ']'.repeat(DEEPEST))).toBeUndefined();
    const objects = (depth: number) => `${'{"a":'.repeat(depth)}1${'}'.repeat(depth)}`;
    expect(jsonFault(objects(DEEPEST))).toBeUndefined();
    expect(jsonFault(objects(DEEPEST + 1))?.what).toBe('too-deep');
    const says = faultOf('['.repeat(200_000));
    expect(says?.id).toBe('rules.too-deep');
    expect(says && inWords(says)).toContain('too deeply');
  });

  it('finds a fault exactly where JSON.parse throws, on texts broken at random', () => {
    const part = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"',
      '"a"',
      '"b":',
      '0',
      '-1',
      '1e5',
      'true',
      'nul',
      ' ',
      '\n',
      '\\',
      '\\u00e9',
      '\t',
      '.',
      'é',
    );
    const mended = fc.jsonValue({ maxDepth: 3 }).map((value) => JSON.stringify(value));
    const damaged = fc.tuple(mended, fc.nat(), fc.nat(3), part).map(([text, at, length, put]) => {
      const cut = at % (text.length + 1);
      return text.slice(0, cut) + put + text.slice(cut + length);
    });
    const text = fc.oneof(
      fc.array(part, { maxLength: 12 }).map((parts) => parts.join('')),
      mended,
      damaged,
    );
    fc.assert(
      fc.property(text, (each) => {
        const fault = jsonFault(each);
        if (fault?.what === 'name-twice') return;
        expect(fault === undefined).toBe(parses(each));
      }),
      { numRuns: 5000 },
    );
  });
});

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
