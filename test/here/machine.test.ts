import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { placeOf, thisMachine } from '../../src/here/machine.js';

const folder = mkdtempSync(join(tmpdir(), 'whydark-here-'));
afterAll(() => rmSync(folder, { recursive: true }));

const machine = thisMachine();
const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

describe.skipIf(process.platform === 'win32')('a real command (not on Windows)', () => {
  test('gives what it printed on both streams, and how it ended', async () => {
    const ran = await machine.run(
      [process.execPath, '-e', 'console.log(1);console.error(2);process.exit(3)'],
      5000,
    );
    if (ran.kind !== 'ended') throw new Error(ran.kind);
    expect([ran.status, text(ran.output), text(ran.errors)]).toEqual([3, '1\n', '2\n']);
  });

  test('speaks the language of the formats, and finds the programs of root', async () => {
    const ran = await machine.run(
      [process.execPath, '-p', '[process.env.LC_ALL, process.env.PATH, process.cwd()]'],
      5000,
    );
    if (ran.kind !== 'ended') throw new Error(ran.kind);
    expect(text(ran.output)).toMatch(/'C',\s+'.*:\/usr\/sbin:\/sbin',\s+'\/'/);
  });

  test('meets no shell', async () => {
    const ran = await machine.run([process.execPath, '-p', 'process.argv[1]', '$HOME; ls | cat > x'], 5000);
    if (ran.kind !== 'ended') throw new Error(ran.kind);
    expect(text(ran.output)).toBe('$HOME; ls | cat > x\n');
  });

  test('is ended when it takes too long', async () => {
    const begun = performance.now();
    expect(await machine.run([process.execPath, '-e', 'setInterval(() => 0, 1000)'], 400)).toEqual({
      kind: 'late',
    });
    expect(performance.now() - begun).toBeLessThan(4000);
  });

  test('does not wait for something to be typed', async () => {
    expect(await machine.run(['cat'], 5000)).toMatchObject({ kind: 'ended', status: 0 });
  });

  test('is ended when it prints without end', async () => {
    const script = "const it = () => process.stdout.write('x'.repeat(65536), it); it()";
    expect(await machine.run([process.execPath, '-e', script], 20_000)).toEqual({ kind: 'too-long' });
  });

  test('is missing, or cannot be started', async () => {
    expect(await machine.run(['no-such-command-of-whydark'], 5000)).toEqual({ kind: 'missing' });
    const file = join(folder, 'not-a-program');
    writeFileSync(file, '', { mode: 0o600 });
    expect(await machine.run([file], 5000)).toEqual({ kind: 'not-started' });
    expect(await machine.run(['a\0b'], 5000)).toEqual({ kind: 'not-started' });
  });
});

test('on Windows a program is taken from the system folder, wherever the call was started', () => {
  expect(placeOf('ipconfig', 'win32', { SystemRoot: 'D:\\WIN' })).toBe('D:\\WIN\\System32\\ipconfig.exe');
  expect(placeOf('arp', 'win32', {})).toBe('C:\\Windows\\System32\\arp.exe');
  expect(placeOf('arp', 'linux', {})).toBe('arp');
});

test('a file is read where it is an ordinary one of at most 1 MiB', () => {
  const file = join(folder, 'resolv.conf');
  writeFileSync(file, 'nameserver 172.23.40.1\n');
  expect(text(machine.read(file) ?? new Uint8Array())).toBe('nameserver 172.23.40.1\n');
  expect(machine.read(join(folder, 'none'))).toBeUndefined();
  expect(machine.read(folder)).toBeUndefined();
  truncateSync(file, 1024 * 1024 + 1);
  expect(machine.read(file)).toBeUndefined();
});
