import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PARSERS } from '../../src/intake/parsers.js';
import { read } from '../../src/intake/read.js';

const FOLDER = new URL('../../src/intake/parsers/', import.meta.url);

test('every parser stands in the list once, under the name of its file', () => {
  const files = readdirSync(FOLDER).map((name) => name.replace(/\.ts$/, ''));
  expect(PARSERS.map((parser) => parser.name).sort()).toEqual(files.sort());
});

test('only what comes last reads leftovers', () => {
  expect(PARSERS.filter((parser) => parser.readsLeftovers === true).map((parser) => parser.name)).toEqual([
    PARSERS.at(-1)?.name,
  ]);
});

test('each parser says where its format is documented', () => {
  for (const parser of PARSERS) expect(parser.source).not.toBe('');
});

test('what is typed around a pasted output is read beside it', () => {
  const text = [
    'camera yard: ip 172.23.40.57 mask 255.255.255.0',
    '',
    '$ ip route',
    'default via 172.23.40.1 dev eth0 proto dhcp metric 100',
    '172.23.40.0/24 dev eth0 proto kernel scope link src 172.23.40.12 metric 100',
    '',
    'phone: 172.23.40.13',
  ].join('\n');
  const { seen, unread, parsers } = read(text, PARSERS);
  expect(seen.adapters.map((adapter) => adapter.owner)).toEqual(['camera', 'phone']);
  expect(seen.routes.map((route) => route.line)).toEqual([4, 5]);
  expect(parsers.map((used) => [used.from, used.to])).toEqual([
    [1, 1],
    [3, 3],
    [4, 5],
    [7, 7],
  ]);
  expect(unread).toEqual([]);
});
