import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
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
  ])('fits the published schema %s', (name, argv) => {
    expect(faults(name, printed(...argv))).toEqual([]);
  });

  it('is held to it: a field too many is refused', () => {
    expect(faults('reckon', { ...(printed(...SUM) as object), extra: 1 })).not.toEqual([]);
  });
});
