import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { toldOf } from '../../src/cli/commands/read.js';
import { readPaste } from '../../src/intake/paste.js';
import { temporaryFolder } from '../files/temporary.js';
import { lineWith, SITE } from '../intake/a-site.js';
import { run } from './built.js';

const folder = temporaryFolder();
const file = join(folder, 'site.txt');
writeFileSync(file, SITE);

interface Told {
  readonly observations: readonly { readonly id: string; readonly value: unknown; readonly line: number }[];
  readonly noticed: readonly string[];
  readonly unread: readonly { readonly number: number }[];
  readonly dropped: number;
  readonly way: { readonly adapter?: number; readonly why: string };
  readonly seen: { readonly adapters: readonly { readonly addresses: readonly unknown[] }[] };
}
const told = (text: string): Told => toldOf(readPaste(text)) as Told;

describe('what is told of a text as JSON', () => {
  it('is all of it: what was seen, and what it means', () => {
    const { seen, way, observations, noticed, unread, dropped } = told(SITE);
    expect(seen.adapters.map(({ addresses }) => addresses)).toEqual([
      [{ address: '172.23.40.5', mask: '255.255.255.0', line: lineWith('172.23.40.5(') }],
      [{ address: '172.23.40.57', mask: '255.255.255.0', line: lineWith('IP address:') }],
    ]);
    expect(way).toEqual({ adapter: 0, why: 'same-range', passedOver: [] });
    expect(observations).toContainEqual({ id: 'camera.answers', value: true, line: lineWith('Pinging') });
    expect(observations).toContainEqual({ id: 'computer.address', value: '172.23.40.5', line: 18 });
    expect(noticed).toEqual([
      'The address of "Ethernet" came from 172.23.40.2, not from its gateway 172.23.40.1.',
    ]);
    expect([unread.length, dropped]).toEqual([4, 10]);
  });

  it('holds no observation of a computer where several adapters could be meant', () => {
    const one = (name: string, address: string): string =>
      `2: ${name}: <BROADCAST,UP,LOWER_UP> mtu 1500 state UP\n    inet ${address} scope global ${name}\n`;
    const { way, observations } = told(one('eth0', '172.23.40.5/24') + one('eth1', '10.77.5.9/24'));
    expect(way.adapter).toBeUndefined();
    expect(observations.map(({ id }) => id)).not.toContain('computer.address');
  });
});

describe('whydark read', () => {
  it('says what it understood of a file', () => {
    const { status, stdout, stderr } = run(['read', file]);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain('Towards the camera: "Ethernet". The camera lies in its range.');
    expect(stdout).not.toMatch(/Rosa|QUAY|herring|boathouse/);
    expect(Math.max(...stdout.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('gives the same from standard input', () => {
    expect(run(['read', '-'], { input: SITE }).stdout).toBe(run(['read', file]).stdout);
  });

  it('gives as JSON what the text tells', () => {
    const { status, stdout } = run(['read', file, '--json']);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(told(SITE))));
    expect(stdout.endsWith('}\n')).toBe(true);
  });

  it('reads UTF-16 with its mark, as a Windows shell saves it', () => {
    const wide = join(folder, 'wide.txt');
    writeFileSync(wide, Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(SITE, 'utf16le')]));
    expect(run(['read', wide]).stdout).toBe(run(['read', file]).stdout);
  });

  it('says so where it understood nothing, and that is no fault', () => {
    const { status, stdout } = run(['read', '-'], { input: 'what a day\n' });
    expect(status).toBe(0);
    expect(stdout).toContain('Nothing in this text was understood.');
    expect(run(['read', '-'], { input: '' }).status).toBe(0);
  });

  it.each([
    ['no file', []],
    ['two files', [file, file]],
    ['a file that is not there', [join(folder, 'none.txt')]],
    ['a folder', [folder]],
  ])('refuses %s, and prints no result', (_, words) => {
    const { status, stdout, stderr } = run(['read', ...words]);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).not.toBe('');
  });

  it('refuses more than 5 MiB', () => {
    const large = join(folder, 'large.txt');
    writeFileSync(large, 'x'.repeat(5 * 1024 * 1024 + 1));
    expect(run(['read', large])).toMatchObject({ status: 2, stdout: '' });
  });
});
