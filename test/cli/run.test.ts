import { appendFileSync, copyFileSync, cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { VERSION } from '../../src/call/version.js';
import { temporaryFolder } from '../files/temporary.js';
import { builtRules, heldCalls, run } from './built.js';

const folder = temporaryFolder();
const [record = ''] = await heldCalls(folder);

/** A file of this text; gives its path. */
function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const answers = (json: unknown): string => JSON.stringify({ answers: json });
const sound = file('sound.json', answers({ 'camera-lights': 'dead' }));
const broken = file('broken.json', '{\n  "answers": {"camera-lights": "dead",}\n}\n');
const unknown = file('unknown.json', answers({ 'camera-light': 'dead' }));
const unfit = file('unfit.json', answers({ 'camera-lights': 'purple', 'camera-mask': 'wide' }));
const [header = '', ...events] = readFileSync(record, 'utf8').split('\n');
const other = file(
  'other.jsonl',
  [header.replace(builtRules().digest, 'e'.repeat(64)), ...events].join('\n'),
);
const cut = file('cut.jsonl', `${[header, ...events].join('\n')}{"at":"2026-11`);
const notRecord = file('not-a-record.jsonl', 'dear diary\n');

/** words; exit status; what stands on stdout, on stderr (`-`: nothing at all) */
const TABLE: readonly (readonly [readonly string[], number, string, string])[] = [
  [[], 2, '-', 'whydark call'],
  [['--help'], 0, 'whydark call', '-'],
  [['-h', 'ticket'], 0, 'whydark ticket', '-'],
  [['--version'], 0, VERSION, '-'],
  [['ticket', '--version'], 0, VERSION, '-'],
  [['diagnos', sound], 2, '-', 'Did you mean "diagnose"?'],
  [['xyzzy'], 2, '-', 'There is no command "xyzzy".'],
  [['__proto__'], 2, '-', 'There is no command "__proto__".'],
  [['questions', '--jsn'], 2, '-', 'Did you mean "--json"?'],
  [['diagnose'], 2, '-', 'needs a file'],
  [['diagnose', sound, sound], 2, '-', 'is left over'],
  [['diagnose', join(folder, 'no-such.json')], 2, '-', 'There is no file or folder'],
  [['diagnose', folder], 2, '-', 'is a folder'],
  [['diagnose', sound], 0, 'Next: ', '-'],
  [['diagnose', sound, '--json', '--site'], 0, '"format": 1', '-'],
  [['diagnose', broken], 2, '-', 'line 2, column 39'],
  [['diagnose', unknown], 2, '-', 'Did you mean "camera-lights"?'],
  [['diagnose', unfit], 2, '-', '/answers/camera-mask: '],
  [['questions'], 0, 'camera-lights', '-'],
  [['questions', '--json'], 0, '"questions"', '-'],
  [['replay', record], 0, '1. Question 1, to begin with', '-'],
  [['replay', record, '--json'], 0, '"verdict"', '-'],
  [['replay', cut, '--json'], 0, '"verdict"', 'was cut off while it was being written'],
  [['ticket', record], 0, 'rule base', '-'],
  [['ticket', record, '--unmasked'], 0, 'rule base', '-'],
  [['ticket', other], 2, '-', 'digest eeeeeeeeeeee'],
  [['ticket', other], 2, '-', 'Give the other one with --rules DIR'],
  [['replay', other], 0, '1. Question 1, to begin with', 'The other one: --rules DIR'],
  [['ticket', notRecord], 2, '-', 'does not begin with the first line of a call record'],
  [['call', 'me'], 2, '-', '"me" is left over'],
  [['rules'], 2, '-', 'rules check'],
  [['rules', 'chekc'], 2, '-', 'rules check'],
  [['rules', 'check', folder], 2, '-', 'holds no manifest.json'],
  [['questions', '--rules', folder], 2, '-', 'holds no manifest.json'],
];

describe('the command', () => {
  it.each(TABLE)('%j ends with %i', (words, status, out, err) => {
    const done = run(words);
    expect(done.status, done.stderr).toBe(status);
    for (const [stream, wanted] of [
      [done.stdout, out],
      [done.stderr, err],
    ] as const) {
      if (wanted === '-') expect(stream).toBe('');
      else expect(stream).toContain(wanted);
    }
    expect(done.stderr).not.toMatch(/^\s+at /m);
  });

  it.each<[string, string | undefined]>([
    ['/dev/null', undefined],
    ['a pipe', 'y\ny\n'],
  ])('needs a terminal to hold a call, and does not hang on %s', (_, input) => {
    const done = run(['call'], input === undefined ? {} : { input });
    expect([done.status, done.stdout]).toEqual([2, '']);
    expect(done.stderr).toContain('A call needs a terminal');
    expect(done.stderr).toContain('whydark diagnose FILE');
  });

  it('says all that does not fit at once, each with its place', () => {
    const { stderr } = run(['diagnose', unfit]);
    expect(
      stderr
        .trim()
        .split('\n')
        .map((line) => line.split(': ')[0]),
    ).toEqual([`${unfit} /answers/camera-lights`, `${unfit} /answers/camera-mask`]);
  });

  it('reads answers from standard input', () => {
    const input = answers({ 'camera-lights': 'dead' });
    expect(run(['diagnose', '-'], { input }).stdout).toBe(run(['diagnose', sound]).stdout);
    expect(run(['diagnose', '-'], { input: '{' }).stderr).toContain(
      'the text on standard input: The file ends too early',
    );
  });

  it('lets no file steer the terminal', () => {
    const evil = file(
      'evil.json',
      `{"answers": {"a\\u001b[2J\\u202e": 1, "camera-lights": "b\\u001b[2J"}, "c\\u0007": 1}`,
    );
    const { status, stderr } = run(['diagnose', evil]);
    expect(status).toBe(2);
    for (const control of ['\u001b', '\u202e', '\u0007']) expect(stderr).not.toContain(control);
  });

  it('keeps lines that a newer version wrote, in their places', () => {
    const newer = JSON.parse(header);
    const at = newer.opened;
    const line = (json: object): string => `${JSON.stringify(json)}\n`;
    const ask = (question: string, answer: unknown): string =>
      line({ at, type: 'answered', question, answer, origin: 'said' });
    const head = line({ ...newer, whydark: '99.0.0' });
    // The newer version took back its own event; the answer before it still holds.
    const path = file(
      'newer.jsonl',
      `${head}${ask('camera-lights', 'dead')}${line({ at, type: 'sang' })}${line({ at, type: 'undone' })}`,
    );
    const done = run(['replay', path, '--json']);
    expect(done.stderr).toContain('of a kind that a newer version wrote');
    const same = file('same.jsonl', `${head}${ask('camera-lights', 'dead')}`);
    expect(done.stdout).toBe(run(['replay', same, '--json']).stdout);
  });
});

describe('the rule base', () => {
  const rules = join(folder, 'rules');
  cpSync('rules', rules, { recursive: true });

  it('is checked, every fault with its file and pointer, and ends with 1', () => {
    const bad = join(folder, 'bad-rules');
    cpSync(rules, bad, { recursive: true });
    const manifest = JSON.parse(readFileSync(join(bad, 'manifest.json'), 'utf8'));
    writeFileSync(join(bad, 'manifest.json'), JSON.stringify({ ...manifest, subjectPrice: 'little' }));
    appendFileSync(join(bad, 'cautions', 'mains.json'), '}');
    const done = run(['rules', 'check', bad]);
    expect(done.status, done.stderr).toBe(1);
    expect(done.stdout).toMatch(/^manifest\.json \/subjectPrice: /m);
    expect(done.stdout).toMatch(/^cautions\/mains\.json: This is not JSON any more at line /m);
    expect(done.stdout).toMatch(/^2 error\(s\), /m);
    expect(done.stdout).not.toContain('is fine');
    const json = JSON.parse(run(['rules', 'check', bad, '--json']).stdout);
    expect(json).toMatchObject({ format: 1, errors: 2, digest: null });
    const used = run(['questions', '--rules', bad]);
    expect([used.status, used.stdout]).toEqual([2, '']);
    expect(used.stderr).toContain('manifest.json /subjectPrice: ');
    expect(used.stderr).toContain('cannot be used. 2 fault(s)');
  });

  it('that is sound ends with 0', () => {
    const done = run(['rules', 'check', rules, '--json']);
    expect(done.status, done.stderr).toBe(0);
    expect(JSON.parse(done.stdout).errors).toBe(0);
  });

  const dist = join(folder, 'dist');
  cpSync('dist', dist, { recursive: true });
  const packed = readFileSync('dist/rules.json', 'utf8');

  it.each([
    ['with one byte wrong', 'rules.json', packed.replace('Power', 'Pover')],
    ['with its end missing', 'rules.json', packed.slice(0, -9)],
    ['with another digest', 'rules.digest', `${'0'.repeat(64)}\n`],
    ['with nothing in it', 'rules.json', ''],
  ])('that was installed is refused %s', (_, name, text) => {
    const command = join(dist, 'whydark.js');
    for (const sound of ['rules.json', 'rules.digest']) copyFileSync(join('dist', sound), join(dist, sound));
    expect(run(['questions'], { command }).status).toBe(0);
    writeFileSync(join(dist, name), text);
    const done = run(['questions'], { command });
    expect([done.status, done.stdout]).toEqual([2, '']);
    expect(done.stderr).toContain('Install whydark again.');
  });
});
