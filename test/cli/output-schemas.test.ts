import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { toldOf } from '../../src/cli/commands/read.js';
import { readPaste } from '../../src/intake/paste.js';
import { textOf } from '../../src/intake/text-of.js';
import { run } from './built.js';

const printed = (...argv: string[]): unknown => JSON.parse(run(argv).stdout);

/** The faults of a value against a schema as the build publishes it. */
function faults(name: string, value: unknown): unknown {
  const schema = JSON.parse(readFileSync(`dist/schema/${name}.schema.json`, 'utf8'));
  const fits = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);
  return fits(value) ? [] : fits.errors;
}

const OLD = 'test/rule-bases/rules-0.2.0.json';
const RECORD = 'transcripts-demo/02-lead-not-clicked-in/record.jsonl';
const SUM = ['reckon', 'subnet', '--address', '172.23.40.21', '--mask', '24', '--json'];

describe('what the commands print with --json', () => {
  it.each([
    ['questions', ['questions', '--json']],
    ['rules-check', ['rules', 'check', 'rules', '--json']],
    ['rules-compare', ['rules', 'compare', OLD, 'rules', RECORD, '--json']],
    ['rules-sources', ['rules', 'sources', 'rules', '--json']],
    ['reckon-topics', ['reckon', '--json']],
    ['reckon', SUM],
    ['read', ['read', 'test/intake/samples/ipconfig/all-english.txt', '--json']],
  ])('fits the published schema %s', (name, argv) => {
    expect(faults(name, printed(...argv))).toEqual([]);
  });

  it('fits the published schema read for every sample of a text', () => {
    const folder = 'test/intake/samples';
    const samples = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.txt'),
    );
    expect(samples.length).toBeGreaterThan(300);
    const schema = JSON.parse(readFileSync('dist/schema/read.schema.json', 'utf8'));
    const fits = new Ajv2020({ strict: true, allErrors: true, allowUnionTypes: true }).compile(schema);
    for (const name of samples) {
      const told = JSON.parse(JSON.stringify(toldOf(readPaste(textOf(readFileSync(join(folder, name)))))));
      expect({ name, errors: fits(told) ? [] : fits.errors }).toEqual({ name, errors: [] });
    }
  });

  it('is held to it: a field too many is refused', () => {
    expect(faults('reckon', { ...(printed(...SUM) as object), extra: 1 })).not.toEqual([]);
  });
});
