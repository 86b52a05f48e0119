import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { builtRules, run } from '../built.js';

const OLD = 'test/rule-bases/rules-0.2.0.json';
const RECORD = 'transcripts-demo/02-lead-not-clicked-in/record.jsonl';
const made: string[] = [];
afterAll(() => {
  for (const folder of made) rmSync(folder, { recursive: true, force: true });
});

/** A folder of additions to the rule base. */
function additions(files: Readonly<Record<string, unknown>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'whydark-test-'));
  made.push(folder);
  for (const [file, json] of Object.entries(files)) {
    mkdirSync(join(folder, file, '..'), { recursive: true });
    writeFileSync(join(folder, file), JSON.stringify(json));
  }
  return folder;
}

const CABLE_RUN = JSON.parse(readFileSync('rules/causes/link/cable-run.json', 'utf8'));
const MOUSE = { ...CABLE_RUN, id: 'mouse-in-the-wall', title: 'A mouse bit the lead', prior: 1 };
const HEAD = { version: 'desk.1', replaces: [] };

describe('rules check', () => {
  it('finds nothing in the rule base as shipped, not even a warning', () => {
    const { status, stdout } = run(['rules', 'check']);
    expect(status).toBe(0);
    expect(stdout).toContain('0 error(s), 0 warning(s).');
  });

  it('checks a help desk’s additions as one with the rule base', () => {
    const folder = additions({ 'additions.json': HEAD, 'causes/link/mouse-in-the-wall.json': MOUSE });
    const { status, stdout } = run(['rules', 'check', 'rules', folder]);
    expect(status).toBe(0);
    expect(stdout).toContain('+desk.1');
    // It shows what its neighbour shows, and has no article.
    expect(stdout).toContain('Nothing that can be asked tells this from');
    expect(stdout).toContain('mouse-in-the-wall');
  });

  it('refuses an addition that takes a record’s place without a word', () => {
    const folder = additions({ 'additions.json': HEAD, 'causes/link/cable-run.json': CABLE_RUN });
    const { status, stdout } = run(['rules', 'check', 'rules', folder]);
    expect(status).toBe(1);
    expect(stdout).toContain('There is a record causes/cable-run in the rule base already.');
  });

  it('says what a folder of additions begins with', () => {
    const { status, stderr } = run(['rules', 'check', 'rules', additions({})]);
    expect(status).toBe(2);
    expect(stderr).toContain('additions.json');
  });

  it('refuses what is no number of calls', () => {
    const { status, stderr } = run(['rules', 'check', 'rules', '--calls', 'many']);
    expect(status).toBe(2);
    expect(stderr).toContain('"many" is no number of calls');
  });
});

describe('rules compare', () => {
  it('names what changed since 0.2 and what a record makes of it, and that the second number says enough', () => {
    const { status, stdout } = run(['rules', 'compare', OLD, 'rules', RECORD]);
    expect(status).toBe(0);
    expect(stdout).toContain('causes/water-in-joint: added');
    expect(stdout).toContain(`Version 0.2.0 to ${builtRules().rules.manifest.version} says enough`);
    expect(stdout).toContain(RECORD);
  });

  it('ends with 1 where the version says too little', () => {
    const { status, stdout } = run(['rules', 'compare', 'rules', OLD]);
    expect(status).toBe(1);
    expect(stdout).toContain('says too little');
  });

  it('is nothing between a rule base and itself', () => {
    const { status, stdout } = run(['rules', 'compare', 'rules', 'dist/rules.json', RECORD]);
    expect(status).toBe(0);
    expect(stdout).toContain('0 record(s) differ.');
    expect(stdout).toContain('unchanged');
  });

  it('wants two', () => {
    expect(run(['rules', 'compare', 'rules']).status).toBe(2);
  });
});

describe('rules sources', () => {
  it('lists what was published, and says what is from memory', () => {
    const { status, stdout } = run(['rules', 'sources']);
    expect(status).toBe(0);
    expect(stdout).toContain('RFC 1122');
    expect(stdout).toContain('from memory');
    expect(stdout).toMatch(/\d+ records rest on common practice, no source; \d+ are judged\./);
  });
});

describe('a record of an older rule base', () => {
  it('plays under its own', () => {
    const old = 'test/rule-bases/record-0.2.0.jsonl';
    const { status, stderr } = run(['replay', old, '--rules', OLD]);
    expect(status).toBe(0);
    expect(stderr).toBe('');
  });

  it('plays under the present one with a note of what moved', () => {
    const { status, stderr, stdout } = run(['replay', 'test/rule-bases/record-0.2.0.jsonl']);
    expect(status).toBe(0);
    expect(stderr).toContain('was made with rule base 0.2.0');
    expect(stderr).toMatch(/puts another step first at \d+ of \d+ entries/);
    expect(stdout).toContain('(this rule base would have put another step first)');
  });
});
