import { mkdirSync, openSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { constants } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { attempt, codeOf, faultOf, InputFault, MachineFault } from '../../src/files/faults.js';
import { faultFrom } from './sample.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
const failing = (code: string) => Object.assign(new Error(code), { code, syscall: 'write' });

// Names and meanings of the codes: POSIX.1-2017, System Interfaces, 2.3 Error Numbers.
const KINDS = [
  ['ENOENT', 2, 'files.missing'],
  ['EISDIR', 2, 'files.is-folder'],
  ['ENOTDIR', 2, 'files.not-folder'],
  ['EEXIST', 2, 'files.exists'],
  ['ELOOP', 2, 'files.links-loop'],
  ['ENAMETOOLONG', 2, 'files.name-too-long'],
  ['EACCES', 3, 'files.forbidden'],
  ['EPERM', 3, 'files.forbidden'],
  ['EROFS', 3, 'files.read-only'],
  ['ENOSPC', 3, 'files.full'],
  ['EDQUOT', 3, 'files.quota'],
  ['EMFILE', 3, 'files.too-many-open'],
  ['ENFILE', 3, 'files.too-many-open'],
  ['EIO', 3, 'files.other'],
] as const;

test.each(KINDS)('%s ends the command with %i and says what to do (%s)', (code, exit, id) => {
  expect(constants.errno).toHaveProperty(code);
  const error = failing(code);
  const fault = faultOf(error, '/calls/one.jsonl');
  expect(fault).toBeInstanceOf(exit === 2 ? InputFault : MachineFault);
  expect(fault).toMatchObject({ exit, sentence: { id }, cause: error });
  expect(fault.message).toContain('/calls/one.jsonl');
  expect(fault.message).not.toMatch(/[{}]/);
});

test('names the code where it has no sentence of its own', () => {
  expect(faultOf(failing('EIO'), '/x').message).toContain('EIO');
});

test('knows the errors that a real file system gives', () => {
  const file = join(folder, 'file');
  writeFileSync(file, 'x');
  mkdirSync(join(folder, 'folder'));
  symlinkSync('circle', join(folder, 'circle'));
  const tries: readonly [() => unknown, string][] = [
    [() => readFileSync(join(folder, 'nothing')), 'files.missing'],
    [() => readFileSync(join(folder, 'folder')), 'files.is-folder'],
    [() => readdirSync(file), 'files.not-folder'],
    [() => openSync(file, 'wx'), 'files.exists'],
    [() => readFileSync(join(folder, 'circle')), 'files.links-loop'],
    [() => readFileSync(join(folder, 'n'.repeat(300))), 'files.name-too-long'],
  ];
  for (const [work, id] of tries) expect(faultFrom(() => attempt(file, work)).sentence.id).toBe(id);
});

test('gives a fault back as it is, and throws on what is no error of the file system', () => {
  const fault = new InputFault({ id: 'files.no-home' });
  expect(faultOf(fault, '/x')).toBe(fault);
  const ours = new TypeError('ours');
  const throwing = () => {
    throw ours;
  };
  expect(() => attempt('/x', throwing)).toThrow(ours);
  expect(codeOf(ours)).toBeUndefined();
});

test('lets no control character of a path reach the terminal', () => {
  const { message } = faultOf(failing('ENOENT'), '/calls/\u001b[2J\u202egnp.\u0007');
  expect(message).toContain('/calls/?[2J?gnp.?');
});
