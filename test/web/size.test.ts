import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pageRules } from '../../src/build/page/page-rules.js';
import { readColumns } from '../../src/web/columns.js';
import { pageWeight } from '../bench/speed/page-weight.js';

const HTML = readFileSync(new URL('../../dist/page/whydark.html', import.meta.url), 'utf8');
const SITE = readFileSync(new URL('../../dist/page/site/index.html', import.meta.url), 'utf8');
const block = (id: string): string => new RegExp(`id="${id}"[^>]*>([^<]*)<`).exec(HTML)?.[1] ?? '';

test('both shapes hold the same script, style, rule base and articles', () => {
  const inside = (html: string) =>
    [...html.matchAll(/<(script|style)[^>]*>([\s\S]*?)<\/\1>/g)].map(([all]) => all);
  expect(inside(HTML)).toEqual(inside(SITE));
  expect(inside(HTML).length).toBe(5);
});

test('the rule base in the page is the one that the build packed, under its digest', () => {
  const packed = JSON.parse(readFileSync('dist/rules.json', 'utf8'));
  expect(readColumns(block('rules'))).toEqual(pageRules(packed));
  const digest = readFileSync('dist/rules.digest', 'utf8').trim();
  expect(HTML).toContain(`<script type="text/plain" id="rules" data-digest="${digest}">`);
});

test('what is tested is what is shipped: no place in the sources is in it', () => {
  expect(HTML).not.toContain('.tsx');
});

test('the page brings the licences of all that was bundled', () => {
  for (const name of ['preact', 'json-rules-engine', 'ip-num', 'marked'])
    expect(block('licences')).toContain(`${name} `);
});

test('code and rules do not grow unseen: 280 kB, compressed with gzip; articles and licences apart', () => {
  const { codeAndRules, rules, articles, licences } = pageWeight('dist/page/whydark.html');
  expect(codeAndRules.gzip).toBeLessThan(280);
  expect(rules.gzip).toBeLessThan(57);
  expect(articles).toBeLessThan(80);
  expect(licences).toBeLessThan(7);
});
