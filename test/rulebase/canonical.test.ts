import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble, assembleTexts } from '../../src/rulebase/assemble.js';
import { canonicalJson, canonicalText, digestOf, digestOfText } from '../../src/rulebase/canonical.js';
import { changed } from './broken.js';
import { readSchemas, SMALL, SMALL_NAMES, smallFiles } from './small-rule-base.js';

const SCHEMAS = readSchemas();

function digestAfter(...change: Parameters<typeof changed>): Promise<string> {
  const { rulebase, faults } = assemble(changed(...change), SCHEMAS, SMALL_NAMES);
  if (rulebase === undefined) throw new Error(JSON.stringify(faults));
  return digestOf(rulebase);
}

/** The same value with the names of every object turned round. */
function backwards(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(backwards);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, inner]) => [name, backwards(inner)]),
  );
}

describe('canonical JSON', () => {
  it('sorts names as the example of RFC 8785 section 3.2.3 does', () => {
    const text =
      '{"\\u20ac":"Euro Sign","\\r":"Carriage Return","\\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",' +
      '"\\ud83d\\ude00":"Emoji: Grinning Face","\\u0080":"Control","\\u00f6":"Latin Small Letter O With Diaeresis"}';
    const sorted = canonicalJson(JSON.parse(text)).matchAll(/":"([^"]*)"/g);
    expect([...sorted].map(([, said]) => said)).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  it('writes values as the example of RFC 8785 section 3.2.2 does', () => {
    const text = String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],
      "string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`;
    expect(canonicalJson(JSON.parse(text))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('keeps every JSON value what it is, whatever the order of names', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const plain: unknown = JSON.parse(JSON.stringify(value));
        expect(JSON.parse(canonicalJson(plain))).toEqual(plain);
        expect(canonicalJson(backwards(plain))).toBe(canonicalJson(plain));
      }),
    );
  });
});

describe('the digest of a rule base', () => {
  it('is SHA-256: "abc" gives the digest of FIPS 180-4 example 1', async () => {
    expect(await digestOfText('abc')).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    );
  });

  it('is the SHA-256 that Node gives for the UTF-8 of the canonical text', async () => {
    const text = canonicalText(SMALL);
    expect(await digestOf(SMALL)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
    expect(await digestOfText('Zürich 🙂')).toBe(
      createHash('sha256').update('Zürich 🙂', 'utf8').digest('hex'),
    );
  });

  it('changes with one byte of any file', async () => {
    const before = await digestAfter([]);
    const prompt = { file: 'questions/power/lights.json', at: '/prompt' };
    expect(await digestAfter([{ ...prompt, value: 'Is a light on at the camera!' }])).not.toBe(before);
    expect(await digestAfter([{ file: 'manifest.json', at: '/cantTell', value: 0.16 }])).not.toBe(before);
    expect(await digestAfter([{ ...prompt, value: 'Is a light on at the camera?' }])).toBe(before);
  });

  it('does not change with the order of names, of files, or with $schema', async () => {
    const before = await digestAfter([]);
    const turned = smallFiles().map(({ file, json }) => ({ file, json: backwards(json) }));
    const { rulebase } = assemble([...turned].reverse(), SCHEMAS, SMALL_NAMES);
    expect(rulebase && (await digestOf(rulebase))).toBe(before);
    const named = { file: 'cautions/mains.json', at: '/$schema', value: '../schema/caution.schema.json' };
    expect(await digestAfter([named])).toBe(before);
  });

  it('does not change with white space in the files', async () => {
    const texts = smallFiles().map(({ file, json }) => ({
      file,
      text: `${JSON.stringify(json, null, 4)}\n`,
    }));
    const { rulebase } = assembleTexts(texts, SCHEMAS, SMALL_NAMES);
    expect(rulebase && (await digestOf(rulebase))).toBe(await digestAfter([]));
  });
});
