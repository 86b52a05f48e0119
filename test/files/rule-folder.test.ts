import { execFileSync, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { readRuleFolder } from '../../src/files/rule-folder.js';
import { readSchemas } from '../../src/files/schemas.js';
import { faultFrom } from './sample.js';
import { temporaryFolder } from './temporary.js';

const temporary = temporaryFolder();

/** A folder with a manifest and these files. */
function folderWith(files: Readonly<Record<string, string | Buffer>> = {}): string {
  const folder = mkdtempSync(join(temporary, 'rules-'));
  for (const [file, text] of Object.entries({ 'manifest.json': '{}', ...files })) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  return folder;
}

test('reads every *.json file but the schemas, named from the folder and sorted by code unit', () => {
  const folder = folderWith({
    'causes/power/supply-off.json': '{"b":1}',
    'causes/power/Zoo.json': '{"c":1}',
    'causes/schema/odd.json': '{"d":1}',
    'facts/.gitkeep': '',
    '.cache/x.json': '{}',
    'schema/cause.schema.json': '{}',
    'README.md': '# no',
    'causes-by-hand.json': '\ufeff{"e":"ä"}',
  });
  expect(readRuleFolder(folder)).toEqual([
    { file: 'causes-by-hand.json', text: '{"e":"ä"}' },
    { file: 'causes/power/Zoo.json', text: '{"c":1}' },
    { file: 'causes/power/supply-off.json', text: '{"b":1}' },
    { file: 'causes/schema/odd.json', text: '{"d":1}' },
    { file: 'manifest.json', text: '{}' },
  ]);
});

test('says so where there is no folder, no manifest, or a file in place of the folder', () => {
  const folder = folderWith();
  const cases = [
    [join(folder, 'none'), 'files.missing'],
    [temporary, 'files.rules-no-manifest'],
    [join(folder, 'manifest.json'), 'files.not-folder'],
  ] as const;
  for (const [path, id] of cases)
    expect(faultFrom(() => readRuleFolder(path))).toMatchObject({ exit: 2, sentence: { id } });
});

test.each([
  ['the folder itself', '.'],
  ['a folder beside it', 'facts'],
])('refuses a link to %s instead of reading it twice or for ever', (_, target) => {
  const folder = folderWith({ 'facts/a.json': '{}' });
  symlinkSync(join(folder, target), join(folder, 'zz'));
  expect(faultFrom(() => readRuleFolder(folder))).toMatchObject({
    exit: 2,
    sentence: { id: 'files.rules-folder-twice', with: { path: join(folder, 'zz') } },
  });
});

test.each([
  ['leads nowhere', 'nothing-there', 'files.missing'],
  ['leads to itself', 'link.json', 'files.links-loop'],
])('refuses a link that %s', (_, target, id) => {
  const folder = folderWith();
  symlinkSync(target, join(folder, 'link.json'));
  expect(faultFrom(() => readRuleFolder(folder))).toMatchObject({ exit: 2, sentence: { id } });
});

test('reads a file of 1 MiB and refuses one that is a byte larger, naming it', () => {
  expect(readRuleFolder(folderWith({ 'a.json': ' '.repeat(1024 * 1024) }))).toHaveLength(2);
  const folder = folderWith({ 'a.json': ' '.repeat(1024 * 1024 + 1) });
  const fault = faultFrom(() => readRuleFolder(folder));
  expect(fault).toMatchObject({ exit: 2, sentence: { id: 'files.too-large' } });
  expect(fault.message).toContain(`${join(folder, 'a.json')} is larger than 1 MiB`);
});

test('refuses a file that is not UTF-8', () => {
  const folder = folderWith({ 'a.json': Buffer.from([0x22, 0xe4, 0x22]) });
  expect(faultFrom(() => readRuleFolder(folder))).toMatchObject({
    exit: 2,
    sentence: { id: 'files.not-text' },
  });
});

test.skipIf(process.platform === 'win32')('does not wait on a pipe with the name of a record', () => {
  const pipe = join(folderWith(), 'pipe.json');
  execFileSync('mkfifo', [pipe]);
  // Without this late writer a reader that waits would wait for ever, and so would the test.
  const writer = spawn('sh', ['-c', 'sleep 3; : > "$0"', pipe], { stdio: 'ignore' });
  const start = performance.now();
  const fault = faultFrom(() => readRuleFolder(dirname(pipe)));
  expect(performance.now() - start).toBeLessThan(2000);
  expect(fault).toMatchObject({ exit: 2, sentence: { id: 'files.not-a-file' } });
  writer.kill();
});

test('reads the schemas of a folder, and only those', () => {
  const folder = folderWith({
    'schema/b.schema.json': '2',
    'schema/a.schema.json': '1',
    'schema/c.json': '3',
  });
  expect(readSchemas(join(folder, 'schema'))).toEqual([
    { file: 'a.schema.json', text: '1' },
    { file: 'b.schema.json', text: '2' },
  ]);
});

test('says so where there are no schemas', () => {
  const folder = folderWith({ 'empty/x.txt': '' });
  expect(faultFrom(() => readSchemas(join(folder, 'empty'))).sentence.id).toBe('files.rules-no-schemas');
  expect(faultFrom(() => readSchemas(join(folder, 'none')))).toMatchObject({
    exit: 2,
    sentence: { id: 'files.missing' },
  });
});
