import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

/** What a strict consumer's compiler is told. Its Node types come from here; everything else from the package. */
const STRICT = {
  compilerOptions: {
    ...{
      strict: true,
      noUncheckedIndexedAccess: true,
      exactOptionalPropertyTypes: true,
      skipLibCheck: false,
    },
    ...{ module: 'nodenext', moduleResolution: 'nodenext', target: 'es2022', outDir: 'out' },
    ...{ types: ['node'], typeRoots: [resolve('node_modules/@types')] },
  },
  files: ['example.mts'],
};

let folder = '';
const inFolder = (command: string, ...words: string[]): string =>
  execFileSync(command, words, { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'whydark-package-'));
  execFileSync('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', folder], {
    stdio: 'ignore',
  });
  const packed = readdirSync(folder).find((name) => name.endsWith('.tgz')) ?? '';
  writeFileSync(join(folder, 'package.json'), '{"name":"consumer","version":"1.0.0"}');
  inFolder('npm', 'install', '--offline', '--no-audit', '--no-fund', `./${packed}`);
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the package, installed into an empty folder', () => {
  it('brings nothing else along', () => {
    const installed = readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'));
    expect(installed).toEqual(['whydark']);
  });

  it('diagnoses from there, with its own rule base', () => {
    writeFileSync(join(folder, 'answers.json'), '{"answers":{"port-light":"all-dark"}}');
    const printed = JSON.parse(inFolder('npx', 'whydark', 'diagnose', 'answers.json', '--json'));
    expect(printed.rules.digest).toBe(readFileSync('dist/rules.digest', 'utf8').trim());
  });

  it('writes a ticket of a call from there', () => {
    const record = resolve('transcripts-demo/02-lead-not-clicked-in/record.jsonl');
    const ticket = readFileSync('transcripts-demo/02-lead-not-clicked-in/ticket.md', 'utf8');
    expect(inFolder('npx', 'whydark', 'ticket', record)).toBe(ticket);
  });

  it('compiles in a strict consumer and runs as the README says', () => {
    const example = /```ts\n([\s\S]*?)```/.exec(readFileSync('README.md', 'utf8'))?.[1];
    expect(example).toContain("from 'whydark/call'");
    writeFileSync(join(folder, 'example.mts'), example ?? '');
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(STRICT));
    execFileSync(resolve('node_modules/.bin/tsc'), ['-p', 'tsconfig.json'], { cwd: folder });
    const [prompt, next, title] = inFolder('node', join('out', 'example.mjs')).split('\n');
    expect(prompt).toMatch(/\?$/);
    expect(next).toBe('ask:at-site');
    expect(title).toMatch(/^# /);
  });

  it('carries the licences of what the bundle brings', () => {
    const notices = readFileSync(join(folder, 'node_modules/whydark/dist/LICENSES.txt'), 'utf8');
    for (const name of ['json-rules-engine', 'inquirer', 'ip-num', 'ajv', 'wrap-ansi']) {
      expect(notices).toMatch(new RegExp(`^${name} \\d`, 'm'));
    }
  });
});
