import { describe, expect, it } from 'vitest';
import { assemble, assembleTexts } from '../../src/rulebase/assemble.js';
import { canonicalText } from '../../src/rulebase/canonical.js';
import { changed, inShort } from './broken.js';
import { readSchemas, SMALL, SMALL_NAMES, smallFiles } from './small-rule-base.js';

const SCHEMAS = readSchemas();

function texts(spoil: Readonly<Record<string, string>> = {}) {
  return smallFiles().map(({ file, json }) => ({ file, text: spoil[file] ?? JSON.stringify(json) }));
}

describe('putting a rule base together', () => {
  it('gives the whole rule base, records sorted by id', () => {
    const { rulebase, faults } = assemble([...smallFiles()].reverse(), SCHEMAS, SMALL_NAMES);
    expect(faults).toEqual([]);
    expect(rulebase && canonicalText(rulebase)).toBe(canonicalText(SMALL));
    expect(rulebase?.questions.map(({ id }) => id)).toEqual(['account-works', 'camera-address', 'lights']);
  });

  it('gives the very bytes that its canonical text reads back to', () => {
    const { rulebase } = assemble(smallFiles(), SCHEMAS, SMALL_NAMES);
    expect(rulebase && JSON.stringify(rulebase)).toBe(JSON.stringify(JSON.parse(canonicalText(SMALL))));
  });

  it('never loads half: one broken file leaves nothing', () => {
    const files = changed([{ file: 'cautions/mains.json', at: '/words' }]);
    const { rulebase, faults } = assemble(files, SCHEMAS, SMALL_NAMES);
    expect(rulebase).toBeUndefined();
    expect(faults.map(inShort)).toEqual(['error cautions/mains.json  rules.missing-field']);
  });

  it('loads beside a warning', () => {
    const files = changed([{ file: 'remedies/power/plug-in-and-sign-in.json', at: '/mends/1' }]);
    const { rulebase, faults } = assemble(files, SCHEMAS, SMALL_NAMES);
    expect(rulebase?.remedies[0]?.mends).toHaveLength(3);
    expect(faults.map(({ grade }) => grade)).toEqual(['warning']);
  });

  it.each([
    'questions/power/lights.json',
    'findings/power/sign-of-life.json',
    'causes/power/supply-off.json',
    'facts/camera-address-kind.json',
    'remedies/power/plug-in-and-sign-in.json',
  ])('does not call records unknown because %s is no JSON', (file) => {
    const { rulebase, faults } = assembleTexts(texts({ [file]: '{' }), SCHEMAS, SMALL_NAMES);
    expect(rulebase).toBeUndefined();
    expect(faults.map(inShort)).toEqual([`error ${file}  rules.text-ends`]);
  });

  it('says that the manifest is missing, and only that', () => {
    const { rulebase, faults } = assembleTexts(
      texts().filter(({ file }) => file !== 'manifest.json'),
      SCHEMAS,
      SMALL_NAMES,
    );
    expect(rulebase).toBeUndefined();
    expect(faults.map(inShort)).toEqual(['error manifest.json  rules.no-manifest']);
  });

  it('does not call a manifest missing that is no JSON', () => {
    const { faults } = assembleTexts(texts({ 'manifest.json': 'version 1' }), SCHEMAS, SMALL_NAMES);
    expect(faults.map(inShort)).toEqual(['error manifest.json  rules.not-json']);
  });
});
