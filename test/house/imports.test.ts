import { describe, expect, test } from 'vitest';
import { importFaults, importsOf } from './imports.js';
import { sources } from './source.js';

test('every import keeps to the order of the rooms', () => {
  expect(sources().length).toBeGreaterThan(50);
  expect(importFaults(sources())).toEqual([]);
});

describe('a planted import is reported', () => {
  test.each([
    ['src/values/x.ts', "import { holds } from '../findings/holds.js';", 'findings comes after values'],
    ['src/messages/x.ts', "import type { Mask } from '../values/mask.js';", 'values comes after messages'],
    ['src/ranking/x.ts', "export { nextStep } from '../steps/next-step.js';", 'steps comes after ranking'],
    ['src/answers/x.ts', "export * from '../call/call.js';", 'call comes after answers'],
    ['src/ticket/deep/x.ts', "import {\n  type A,\n  b,\n} from '../../web/b.js';", 'web comes after ticket'],
    ['src/call/x.ts', "const it = await import('../files/record.js');", 'files comes after call'],
    ['src/call/x.ts', "import '../cli/main.js';", 'cli comes after call'],
    ['src/cli/x.ts', "import { posterior } from '../ranking/posterior.js';", 'may not use ranking'],
    ['src/web/x.ts', "import { readRecord } from '../files/record.js';", 'may not use files'],
    ['src/web/x.ts', "import { ask } from '../cli/ask.js';", 'may not use cli'],
    ['src/steps/x.ts', "import { Engine } from 'json-rules-engine';", 'only findings may use it'],
    ['src/cli/x.ts', "import { marked } from 'marked';", 'only knowledge may use it'],
    ['src/call/x.ts', "import { Ajv2020 } from 'ajv/dist/2020.js';", 'only rulebase may use it'],
    ['src/findings/x.ts', "import { IPv4 } from 'ip-num';", 'only values and arithmetic may use it'],
    ['src/files/x.ts', "import { createPrompt } from '@inquirer/core';", 'only cli may use it'],
    ['src/values/x.ts', "import fc from 'fast-check';", 'no library of this project'],
    ['src/values/x.ts', "import { a } from './a';", 'ends in .js'],
    ['src/cli/x.ts', "import './style/x.css';", 'ends in .js'],
    ['src/web/x.tsx', "import '../cli/x.css';", 'ends in .js'],
    ['src/cli/x.ts', "import { demo } from '../build/demo.js';", '"build" is no room'],
    ['src/attic/x.ts', '', 'stands in no room'],
    ['src/x.ts', '', 'stands in no room'],
  ])('%s: %s', (path, text, fault) => {
    const found = importFaults([{ path, text }]);
    expect(found.length).toBe(1);
    expect(found[0]).toContain(fault);
  });
});

test.each([
  ['src/cli/x.ts', "import type { Ranked } from '../diagnosis/diagnosis.js';"],
  ['src/cli/x.ts', "import { say } from '../messages/say.js';"],
  ['src/build/x.ts', "import { a } from '../cli/a.js';\nimport { b } from 'rolldown';"],
  ['src/steps/x.ts', "import { holds } from '../findings/holds.js';\nimport { ways } from './ways.js';"],
  ['src/web/x.tsx', "import './style/x.css';\nimport { render } from 'preact';"],
  ['src/values/x.ts', "// import { holds } from '../findings/holds.js';"],
])('%s may have: %s', (path, text) => {
  expect(importFaults([{ path, text }])).toEqual([]);
});

test('imports are found whatever stands around them', () => {
  const text = [
    "const quotes = /^[\"'`]+/; /* import x from './no.js'; */",
    `const word = \`a \${"}"} // b\`;`,
    "import type { A } from './a.js';",
    "import b, { type C } from './b.js';",
    "export type { D } from './d.js';",
    'export function from() {}',
    "const e = import('./e.js');",
  ].join('\n');
  expect(importsOf({ path: 'src/values/x.ts', text })).toEqual([
    { from: './a.js', typeOnly: true },
    { from: './b.js', typeOnly: false },
    { from: './d.js', typeOnly: true },
    { from: './e.js', typeOnly: false },
  ]);
});
