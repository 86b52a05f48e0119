import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { amps, celsius, metres, ohms, volts, watts } from '../../../src/values/units/physical.js';

const repository = fileURLToPath(new URL('../../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'measures-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** What the compiler says of a line of code that may use volts and watts; empty where it has nothing to say. */
function compilerOn(line: string): string {
  const file = join(folder, 'line.mts');
  const module = join(repository, 'src/values/units/physical.js');
  writeFileSync(
    file,
    `import { type Volts, volts, watts } from '${module}';\n${line}\nexport { volts, watts };\n`,
  );
  const flags = ['--noEmit', '--strict', '--module', 'nodenext', '--target', 'es2023', '--skipLibCheck'];
  try {
    execFileSync(join(repository, 'node_modules/.bin/tsc'), [...flags, '--types', '', file], { cwd: folder });
    return '';
  } catch (error) {
    return String((error as { stdout?: unknown }).stdout);
  }
}

describe('a measure', () => {
  test('is its number', () => {
    expect([volts(44), amps(0.35), watts(12.95), ohms(20), metres(100), celsius(-20)]).toEqual([
      44, 0.35, 12.95, 20, 100, -20,
    ]);
  });

  test('is never something that is not a number', () => {
    expect(() => volts(Number('far'))).toThrow(RangeError);
  });

  test('of one unit is accepted by the compiler for itself', () => {
    expect(compilerOn('export const right: Volts = volts(12);')).toBe('');
  }, 60_000);

  test.each(['export const wrong: Volts = watts(12);', 'export const wrong: Volts = 12;'])(
    'of another unit or none is refused by the compiler: %s',
    (line) => {
      expect(compilerOn(line)).toContain('is not assignable to type');
    },
    60_000,
  );
});
