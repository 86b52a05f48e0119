import { createHash } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadBuiltRules } from '../../src/files/built-rules.js';
import { faultFrom } from './sample.js';
import { temporaryFolder } from './temporary.js';

const temporary = temporaryFolder();
const TEXT = '{"causes":[],"manifest":{"title":"Prüfung","version":"0.1.0"}}';
const DAMAGED = { exit: 2, sentence: { id: 'files.rules-damaged' } };

/** A folder as the build leaves it; gives the URLs of the bundle and of a chunk. The digest is node:crypto's. */
function built(bytes: Buffer | string = TEXT) {
  const folder = mkdtempSync(join(temporary, 'dist-'));
  mkdirSync(join(folder, 'chunks'));
  writeFileSync(join(folder, 'rules.json'), bytes);
  writeFileSync(join(folder, 'rules.digest'), `${createHash('sha256').update(TEXT).digest('hex')}\n`);
  const url = (name: string) => pathToFileURL(join(folder, name)).href;
  return { folder, bundle: url('whydark.js'), chunk: url('chunks/call-Ab1.js') };
}

test('loads the rule base beside the bundle, from the bundle and from a chunk of it', async () => {
  const { bundle, chunk } = built();
  for (const url of [bundle, chunk]) {
    const rules = loadBuiltRules(url);
    expect(rules.ruleBase).toEqual(JSON.parse(TEXT));
    expect(rules.digest).toMatch(/^[0-9a-f]{64}$/);
    await expect(rules.verify()).resolves.toBeUndefined();
    expect(rules.verify()).toBe(rules.verify());
  }
});

test('says to install again when any one byte is another', async () => {
  const bytes = Buffer.from(TEXT);
  await fc.assert(
    fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (place, change) => {
      const other = Buffer.from(bytes);
      other[place] = (other[place] ?? 0) ^ change;
      const load = async () => loadBuiltRules(built(other).bundle).verify();
      await expect(load()).rejects.toMatchObject(DAMAGED);
    }),
  );
});

test('does not sum the file up before it is asked to', () => {
  const { bundle } = built(TEXT.replace('0.1.0', '0.1.1'));
  expect(loadBuiltRules(bundle).ruleBase).toMatchObject({ manifest: { version: '0.1.1' } });
});

test.each(['rules.json', 'rules.digest'])('says to install again when %s is missing', (name) => {
  const { folder, bundle } = built();
  rmSync(join(folder, name));
  const fault = faultFrom(() => loadBuiltRules(bundle));
  expect(fault).toMatchObject(DAMAGED);
  expect(fault.message).toContain('Install whydark again');
});

test('says to install again when the file was cut', () => {
  expect(faultFrom(() => loadBuiltRules(built(TEXT.slice(0, -1)).bundle))).toMatchObject(DAMAGED);
});
