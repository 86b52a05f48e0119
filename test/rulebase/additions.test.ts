import { describe, expect, it } from 'vitest';
import { withAdditions } from '../../src/rulebase/additions.js';

const BASE = [
  { file: 'manifest.json', text: '{"version": "1.0.0", "date": "2026-11-25"}' },
  { file: 'causes/link/cable-run.json', text: '{"id": "cable-run"}' },
];
const head = (replaces: readonly string[] = []) => ({
  file: 'additions.json',
  text: JSON.stringify({ version: 'desk.2', replaces }),
});
const own = { file: 'causes/link/mouse-in-the-wall.json', text: '{}' };
const mine = { file: 'causes/power/cable-run.json', text: '{"id": "cable-run", "mine": true}' };
const faults = (added: Parameters<typeof withAdditions>[1]) =>
  withAdditions(BASE, added).faults.map(({ file, says }) => `${file} ${says.id}`);

describe('a help desk’s own records beside a rule base', () => {
  it('are added, and the version tells', () => {
    const { texts, faults: none } = withAdditions(BASE, [head(), own]);
    expect(none).toEqual([]);
    expect(texts.map(({ file }) => file)).toEqual([...BASE.map(({ file }) => file), own.file]);
    expect(JSON.parse(texts[0]?.text ?? '').version).toBe('1.0.0+desk.2');
  });

  it('take no record’s place by accident, wherever it stands', () => {
    expect(faults([head(), mine])).toEqual([`${mine.file} additions.there-already`]);
  });

  it('take a record’s place where they say so', () => {
    const { texts, faults: none } = withAdditions(BASE, [head(['causes/cable-run']), mine]);
    expect(none).toEqual([]);
    expect(texts.filter(({ file }) => file.includes('cable-run'))).toEqual([mine]);
  });

  it('can only replace what is on both sides', () => {
    expect(faults([head(['causes/cable-run'])])).toEqual(['additions.json additions.nothing-to-replace']);
    expect(faults([head(['causes/no-such'])])).toEqual(['additions.json additions.nothing-to-replace']);
  });

  it('bring no manifest, and do not come without a head', () => {
    expect(faults([head(), { file: 'manifest.json', text: '{}' }])).toContain(
      'manifest.json additions.manifest',
    );
    for (const text of ['', '[]', '{}', '{"version": "a b"}', '{"version": "x", "replaces": [1]}']) {
      expect(faults([{ file: 'additions.json', text }])).toEqual(['additions.json additions.no-head']);
    }
  });
});
