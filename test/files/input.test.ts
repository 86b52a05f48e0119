import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LARGEST_INPUT, readInput } from '../../src/files/input.js';
import { temporaryFolder } from './temporary.js';

const folder = temporaryFolder();
const nobody = Readable.from([]);

function saved(bytes: Buffer | string): string {
  const path = join(folder, 'output.txt');
  writeFileSync(path, bytes);
  return path;
}

test('reads a file, and standard input for -', async () => {
  expect(await readInput(saved('Gateway 10.77.5.1\r\n'), nobody)).toBe('Gateway 10.77.5.1\r\n');
  expect(await readInput('-', Readable.from(['10.77', '.5.1']))).toBe('10.77.5.1');
  expect(await readInput('-', nobody)).toBe('');
});

test('puts characters together again wherever the stream cut them', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme' }), fc.integer({ min: 1, max: 5 }), async (text, size) => {
      const bytes = Buffer.from(text);
      const chunks = Array.from({ length: Math.ceil(bytes.length / size) }, (_, index) =>
        bytes.subarray(index * size, (index + 1) * size),
      );
      expect(await readInput('-', Readable.from(chunks))).toBe(text);
    }),
  );
});

// Byte order marks: The Unicode Standard 16.0, section 23.8, table 23-6.
test.each([
  ['UTF-8', Buffer.from([0xef, 0xbb, 0xbf, 0x41, 0xc3, 0xa4])],
  ['UTF-16, little end first', Buffer.from([0xff, 0xfe, 0x41, 0x00, 0xe4, 0x00])],
  ['UTF-16, big end first', Buffer.from([0xfe, 0xff, 0x00, 0x41, 0x00, 0xe4])],
])('drops the byte order mark of %s', async (_, bytes) => {
  expect(await readInput(saved(bytes), nobody)).toBe('Aä');
  expect(await readInput('-', Readable.from([bytes]))).toBe('Aä');
});

test('keeps the figures of an old code page legible', async () => {
  const bytes = Buffer.concat([Buffer.from('M'), Buffer.from([0x81]), Buffer.from('nze 10.77.5.1')]);
  expect(await readInput(saved(bytes), nobody)).toBe('M\ufffdnze 10.77.5.1');
});

test('reads 5 MiB and refuses a byte more, from a file and from a stream without end', async () => {
  expect(await readInput(saved('x'.repeat(LARGEST_INPUT)), nobody)).toHaveLength(LARGEST_INPUT);
  const path = saved('x'.repeat(LARGEST_INPUT + 1));
  const tooLarge = { exit: 2, sentence: { id: 'files.too-large', with: { path, limit: '5 MiB' } } };
  await expect(readInput(path, nobody)).rejects.toMatchObject(tooLarge);
  const endless = new Readable({
    read() {
      this.push('x'.repeat(65_536));
    },
  });
  await expect(readInput('-', endless)).rejects.toThrow('standard input is larger than 5 MiB');
  expect(endless.destroyed).toBe(true);
});

test.each([
  ['a file that is not there', 'none.txt', 'files.missing'],
  ['a folder', 'folder', 'files.is-folder'],
  ['a picture', 'picture', 'files.not-text'],
])('says so for %s', async (_, name, id) => {
  mkdirSync(join(folder, 'folder'), { recursive: true });
  // The signature and the first chunk of a PNG file (ISO/IEC 15948, 5.2 and 11.2.2).
  writeFileSync(join(folder, 'picture'), Buffer.from('89504e470d0a1a0a0000000d49484452', 'hex'));
  await expect(readInput(join(folder, name), nobody)).rejects.toMatchObject({ exit: 2, sentence: { id } });
});

test('reports a stream that breaks', async () => {
  const broken = new Readable({
    read() {
      this.destroy(Object.assign(new Error('EIO'), { code: 'EIO', syscall: 'read' }));
    },
  });
  await expect(readInput('-', broken)).rejects.toMatchObject({ exit: 3, sentence: { id: 'files.other' } });
});
