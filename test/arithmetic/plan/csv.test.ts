import { describe, expect, it } from 'vitest';
import { csvOf } from '../../../src/arithmetic/plan/csv.js';
import { ADDRESS_PLAN } from '../../../src/arithmetic/topics/address-plan.js';

/** Reads RFC 4180, section 2, by its grammar: fields, quoted fields with doubled quotes, CRLF. */
function read(csv: string): string[][] {
  const rows: string[][] = [[]];
  let at = 0;
  while (at < csv.length) {
    let field = '';
    if (csv[at] === '"') {
      for (at += 1; csv[at] !== '"' || csv[at + 1] === '"'; at++) {
        if (csv[at] === '"') at += 1;
        field += csv[at];
      }
      at += 1;
    } else while (at < csv.length && csv[at] !== ',' && csv[at] !== '\r') field += csv[at++];
    rows.at(-1)?.push(field);
    if (csv[at] === ',') at += 1;
    else {
      expect(csv.slice(at, at + 2)).toBe('\r\n');
      at += 2;
      if (at < csv.length) rows.push([]);
    }
  }
  return rows;
}

describe('comma-separated values (RFC 4180)', () => {
  it('come back as they went in, commas, quotes and line ends included', () => {
    const rows = [
      ['camera', 'address'],
      ['Yard, north', 'the "big" one'],
      ['two\r\nlines', ''],
    ];
    expect(read(csvOf(rows))).toEqual(rows);
  });

  it('hold the plan: a head and a row for each camera', () => {
    const given = { 'router-address': '172.23.40.1', 'router-mask': '24', cameras: 'Yard, Gate "old"' };
    const result = ADDRESS_PLAN.reckon(given);
    const rows = read(result.ok ? (result.value.csv ?? '') : '');
    expect(rows[0]).toEqual(['camera', 'address', 'mask', 'gateway', 'first dns']);
    expect(rows.slice(1).map((row) => row[0])).toEqual(['Yard', 'Gate "old"']);
    expect(rows[1]?.[3]).toBe('172.23.40.1');
  });

  it('hold the cameras that got no address too, with the field left empty', () => {
    const given = { 'router-address': '172.23.40.1', 'router-mask': '30', cameras: 'Yard, Gate' };
    const result = ADDRESS_PLAN.reckon(given);
    const rows = read(result.ok ? (result.value.csv ?? '') : '');
    expect(rows.slice(1).map((row) => row.slice(0, 2))).toEqual([
      ['Yard', '172.23.40.2'],
      ['Gate', ''],
    ]);
  });
});
