import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';
import { afterAll, describe, expect, it } from 'vitest';
import { faultLine, packInto, packRules } from '../../src/build/pack-rules.js';
import { canonicalText } from '../../src/rulebase/canonical.js';
import { isError } from '../../src/rulebase/fault.js';
import { changed } from '../rulebase/broken.js';
import { SMALL } from '../rulebase/small-rule-base.js';

const REPOSITORY = fileURLToPath(new URL('../../', import.meta.url));
const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

/** A folder with `rules/` in it: the small rule base, changed, and the schemas. */
function rootWith(...change: Parameters<typeof changed>): string {
  const root = mkdtempSync(join(tmpdir(), 'whydark-pack-'));
  made.push(root);
  for (const { file, json } of changed(...change)) {
    const path = join(root, 'rules', file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, JSON.stringify(json, null, 2));
  }
  cpSync(join(REPOSITORY, 'rules', 'schema'), join(root, 'rules', 'schema'), { recursive: true });
  return root;
}

const NO_WORDS = { file: 'cautions/mains.json', at: '/words' };
const UNMENDED = { file: 'remedies/power/plug-in-and-sign-in.json', at: '/mends/1' };

describe('packing the rule base', () => {
  it('writes the canonical text, its digest and the schemas', async () => {
    const root = rootWith([]);
    const lines: string[] = [];
    expect(await packInto(root, (line) => lines.push(line))).toBe(0);
    expect(lines).toEqual([]);
    const text = readFileSync(join(root, 'dist', 'rules.json'), 'utf8');
    expect(text).toBe(canonicalText(SMALL));
    const digest = readFileSync(join(root, 'dist', 'rules.digest'), 'utf8');
    expect(digest).toBe(`${createHash('sha256').update(text, 'utf8').digest('hex')}\n`);
    const printed = [
      'article',
      'articles',
      'diagnosis',
      'here',
      'questions',
      'read',
      'reckon',
      'reckon-topics',
      'rules-check',
      'rules-compare',
      'rules-sources',
    ];
    const own = printed.map((name) => `${name}.schema.json`);
    const schemas = [...readdirSync(join(root, 'rules', 'schema')), ...own].sort();
    expect(readdirSync(join(root, 'dist', 'schema')).sort()).toEqual(schemas);
  });

  it('says every fault on a line, and writes nothing', async () => {
    const root = rootWith([NO_WORDS, { file: 'manifest.json', at: '/words/always', value: 98 }]);
    const lines: string[] = [];
    expect(await packInto(root, (line) => lines.push(line))).toBe(1);
    expect(lines).toEqual([
      'cautions/mains.json : The field "words" is missing. Add it.',
      'manifest.json /words/always: 98 is too large. Write 1 or less.',
    ]);
    expect(existsSync(join(root, 'dist'))).toBe(false);
  });

  it('packs beside a warning, and says it', async () => {
    const root = rootWith([UNMENDED]);
    const lines: string[] = [];
    expect(await packInto(root, (line) => lines.push(line))).toBe(0);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain('causes/sign-in/password-changed.json');
  });

  it('is a script that ends with 1 on an error, 2 without rules, and says why on the error stream', async () => {
    const root = rootWith([NO_WORDS]);
    const script = join(root, 'pack-rules.mjs');
    const bundle = await rolldown({ input: join(REPOSITORY, 'src/build/pack-rules.ts'), platform: 'node' });
    await bundle.write({ file: script, format: 'esm' });
    const link = join(root, 'link.mjs');
    symlinkSync(script, link);
    for (const called of [script, link]) {
      const broken = spawnSync(process.execPath, [called], { cwd: root, encoding: 'utf8' });
      expect(broken).toMatchObject({ status: 1, stdout: '' });
      expect(broken.stderr).toContain('cautions/mains.json : The field "words" is missing.');
    }
    const empty = mkdtempSync(join(tmpdir(), 'whydark-pack-'));
    made.push(empty);
    const without = spawnSync(process.execPath, [script], { cwd: empty, encoding: 'utf8' });
    expect(without).toMatchObject({ status: 2, stdout: '' });
    expect(without.stderr).not.toContain('    at ');
  });

  it('finds no error in the rules of this repository', async () => {
    const { faults, built } = await packRules(join(REPOSITORY, 'rules'));
    expect(faults.filter(isError).map(faultLine)).toEqual([]);
    expect(built?.digest).toMatch(/^[0-9a-f]{64}$/);
  });
});
