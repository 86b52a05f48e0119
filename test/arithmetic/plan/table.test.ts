import fc from 'fast-check';
import { marked } from 'marked';
import { describe, expect, it } from 'vitest';
import { type TableRow, tableLines } from '../../../src/arithmetic/plan/table.js';
import { inWords } from '../../../src/messages/say.js';
import type { Address } from '../../../src/values/address.js';

const address = (bits: number): Address => ({ kind: 'ipv4', bits });
const ROUTER = address(0xac1728fe);
const drawn = (rows: readonly TableRow[]): readonly string[] =>
  tableLines(rows, { kind: 'mask', prefix: 25 }, ROUTER).map(inWords);

/** The cells of each row as a GFM reader finds them. */
function cells(lines: readonly string[]): readonly (readonly string[])[] {
  const [table] = marked.lexer(lines.join('\n'), { gfm: true });
  if (table?.type !== 'table') throw new Error('no table');
  const rows: { tokens: { type: string; text: string }[] }[][] = table.rows;
  return rows.map((row) =>
    row.map(({ tokens }) =>
      tokens.map(({ type, text }) => (type === 'text' || type === 'escape' ? text : `<${type}>`)).join(''),
    ),
  );
}

describe('the table of a plan', () => {
  it('stands in columns, and says where there was no address', () => {
    const rows = [
      { camera: 'Yard', address: address(0xac1728f2) },
      { camera: 'Gate, old', address: undefined },
    ];
    expect(drawn(rows)).toEqual([
      '| Camera    | Address       | Subnet mask     | Default gateway |',
      '| --------- | ------------- | --------------- | --------------- |',
      '| Yard      | 172.23.40.242 | 255.255.255.128 | 172.23.40.254   |',
      '| Gate, old | none free     | 255.255.255.128 | 172.23.40.254   |',
    ]);
  });

  it('cuts long names, and tells them apart by their place in the list', () => {
    const rows = ['left', 'right'].map((side, at) => ({
      camera: `Warehouse, north entrance, ${side}`,
      address: address(0xac1728f2 + at),
    }));
    const [, , left = '', right = ''] = drawn(rows);
    expect(left).toMatch(/^\| Warehouse, north.*… 1 +\| 172\.23\.40\.242/);
    expect(right).toMatch(/^\| Warehouse, north.*… 2 +\| 172\.23\.40\.243/);
  });

  it('shows any short name as typed to a reader of GFM tables, marked', () => {
    const name = fc.stringMatching(/^[a-zA-Z][a-zA-Z0-9 _|<>[\]*`&~\\!().-]{0,7}[a-zA-Z]$/);
    fc.assert(
      fc.property(fc.array(name, { minLength: 1, maxLength: 6 }), (names) => {
        const lines = drawn(names.map((camera, at) => ({ camera, address: address(0xac1728f2 + at) })));
        expect(cells(lines).map((row) => row[0])).toEqual(names);
      }),
    );
  });

  it.each(['~old~', '*x*', '_y_', '[a](b)', '![a](b)', '<b>x', 'a|b', '`c`', 'a&lt;', '\\|', '\\*'])(
    'shows %s as typed',
    (camera) => {
      expect(cells(drawn([{ camera, address: ROUTER }]))[0]?.[0]).toBe(camera);
    },
  );

  it('is never wider than 80 columns', () => {
    const row = fc.record({ camera: fc.string({ minLength: 1, maxLength: 200 }), bits: fc.nat(0xffffffff) });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
        const lines = drawn(rows.map(({ camera, bits }) => ({ camera, address: address(bits) })));
        expect(Math.max(...lines.map((line) => [...line].length))).toBeLessThanOrEqual(80);
        expect(new Set(lines.map((line) => [...line].length)).size).toBe(1);
      }),
    );
  });
});
