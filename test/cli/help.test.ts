import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HELP_WORDS } from '../../src/messages/english/help.js';
import { run } from './built.js';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'whydark-help-'));
  const command = join(folder, 'whydark');
  writeFileSync(command, `#!/bin/sh\nexec "${process.execPath}" "${resolve('dist/whydark.js')}" "$@"\n`);
  chmodSync(command, 0o755);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** These end only when somebody ends them; their own tests run them. */
const WAITS = ['call', 'page'];

const helps = Object.entries(HELP_WORDS).map(([id, words]) => [id.replace('help.', ''), words] as const);

describe('the help of each command', () => {
  it.each(helps)('%s --help says it on standard output, within 80 columns', (command, words) => {
    const { stdout, status } = run([command, '--help']);
    expect(status).toBe(0);
    expect(stdout).toBe(`${words}\n`);
    expect(Math.max(...words.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('lists every command in the usage', () => {
    const { stdout } = run(['--help']);
    for (const [command] of helps) expect(stdout).toContain(`whydark ${command}`);
  });

  it.each(helps.filter(([command]) => !WAITS.includes(command)))('%s: its example works', (_, words) => {
    const example = /^Example: (.*)$/m.exec(words)?.[1] ?? '';
    expect(example).toContain('whydark');
    const env = { ...process.env, PATH: `${folder}:${process.env.PATH}` };
    const { status, stdout } = spawnSync('sh', ['-c', example], { env, encoding: 'utf8' });
    expect(status, example).toBe(0);
    expect(stdout.length).toBeGreaterThan(20);
  });

  it('call: its example asks for a terminal where there is none', () => {
    expect(() => execFileSync(process.execPath, ['dist/whydark.js', 'call'], { stdio: 'pipe' })).toThrow(
      /terminal/,
    );
  });
});
