import { describe, expect, test } from 'vitest';
import { platformFaults } from './platform.js';
import { codeOf, sources } from './source.js';

test('everything but files, here, cli and build runs unchanged in Node and in a browser', () => {
  expect(platformFaults(sources())).toEqual([]);
});

describe('a planted use is reported', () => {
  test.each([
    ["import { readFileSync } from 'node:fs';", 'node:fs'],
    ["const it = await import('node:os');", 'node:os'],
    ['const here = process.cwd();', 'process'],
    ['const a = [process];', 'process'],
    ['const b = Buffer.from(text);', 'Buffer'],
    ['const c = require("fs");', 'require'],
    ['const d = __dirname;', '__dirname'],
    ["console.log('hello');", 'console'],
    ['const now = Date.now();', 'Date.now'],
    ['const now = new Date();', 'new Date'],
    ['const now = new Date(text);', 'new Date'],
    ['const r = Math.random();', 'Math.random'],
    ['setTimeout(() => {}, 5);', 'setTimeout'],
    ["localStorage.setItem('a', 'b');", 'localStorage'],
    ['document.title = text;', 'document'],
    [`const w = \`\${window.name}\`;`, 'window'],
    ["await fetch('/');", 'fetch'],
    ['const p = globalThis.process;', 'process'],
    ['const q = globalThis?.fetch;', 'fetch'],
    ['const ms = performance.now();', 'performance'],
    ['const { window } = globalThis;\nwindow.close();', 'window'],
  ])('%s', (text, found) => {
    expect(platformFaults([{ path: 'src/ranking/x.ts', text }])).toEqual([`src/ranking/x.ts: ${found}`]);
    expect(platformFaults([{ path: 'src/files/x.ts', text }])).toEqual([]);
  });
});

test('the page may use what a page has, and nothing of Node', () => {
  const path = 'src/web/x.ts';
  expect(platformFaults([{ path, text: 'document.title = String(new Date());' }])).toEqual([]);
  expect(platformFaults([{ path, text: 'process.exit();' }])).toEqual([`${path}: process`]);
});

test.each([
  "// process.exit() and console.log()\nconst a = 'console.log(document)';",
  `/* new Date() */ const b = \`fetch \${1} window\`;`,
  'const c = question.document;',
  'interface D { readonly window: string; readonly process?: number }',
  'const documents = processed;',
  'const { from, window } = inputs;\nsum(window);',
  'const window = 5;\nsum(window);',
  'const e = /console|document/;',
])('%s is none', (text) => {
  expect(platformFaults([{ path: 'src/ranking/x.ts', text }])).toEqual([]);
});

test('code without its quotes keeps all that runs', () => {
  const text = `const a = x / y; // z\nconst b = 'it''s' + \`a \${f(\`b \${'}'}\`)} c\` + /[/'"]/.source;`;
  const code = codeOf(text, false);
  expect(code).toContain('const a = x / y;');
  expect(code).toContain('f(`');
  expect(code).toContain('.source;');
  expect(code).not.toMatch(/[z"]/);
  expect(codeOf(text, true)).toBe(text.replace('// z', ' '));
});
