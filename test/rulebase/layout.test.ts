import { describe, expect, it } from 'vitest';
import { fileOf, filePlace, SCHEMA_OF } from '../../src/rulebase/layout.js';
import { pointer } from '../../src/rulebase/pointer.js';
import { KINDS } from '../../src/rulebase/records.js';
import { shown } from '../../src/rulebase/shown.js';
import { readSchemas } from './small-rule-base.js';

describe('where records stand', () => {
  it('reads kind, stage and id from a path', () => {
    expect(filePlace('causes/power/supply-off.json')).toEqual({
      kind: 'causes',
      stage: 'power',
      id: 'supply-off',
    });
    expect(filePlace('tester-faults/other-camera.json')).toEqual({
      kind: 'tester-faults',
      id: 'other-camera',
    });
  });

  it.each([
    'manifest.json',
    'causes.json',
    'causes/supply-off.json',
    'causes/power/east/supply-off.json',
    'facts/power/x.json',
    'facts/.json',
    'causes/power/.json',
    'causes/power/supply-off.yaml',
    'schema/cause.schema.json',
    'Causes/power/supply-off.json',
  ])('knows no record at %s', (file) => {
    expect(filePlace(file)).toBeUndefined();
  });

  it('writes the path it reads', () => {
    for (const kind of KINDS)
      expect(filePlace(fileOf(kind, 'an-id', 'power'))).toMatchObject({ kind, id: 'an-id' });
  });

  it('has a schema for every kind', () => {
    const there = Object.keys(readSchemas());
    for (const kind of KINDS) expect(there).toContain(SCHEMA_OF[kind]);
    expect(there).toHaveLength(KINDS.length + 2);
  });
});

describe('showing what stands in a file', () => {
  it('escapes a pointer as RFC 6901 section 5 does', () => {
    expect(pointer('a/b')).toBe('/a~1b');
    expect(pointer('m~n')).toBe('/m~0n');
    expect(pointer('foo', 0)).toBe('/foo/0');
  });

  it('keeps a value of 40 characters and cuts a longer one', () => {
    expect(shown('x'.repeat(38))).toBe(`"${'x'.repeat(38)}"`);
    expect(shown('x'.repeat(39))).toBe(`"${'x'.repeat(39)}...`);
    expect(shown('x'.repeat(5_000_000))).toHaveLength(43);
  });

  it('drops characters that would steer a terminal or turn the direction of text', () => {
    expect(shown('a\u202eb\u009bc\u200bd')).toBe('"abcd"');
    expect(shown('\u001b[2J')).not.toContain('\u001b');
  });
});
