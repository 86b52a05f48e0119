import { describe, expect, test } from 'vitest';
import { lines, nameFaults, sizeFaults } from './sizes.js';
import { type Source, sources } from './source.js';

test('files are small: none over 300 lines, half of them at most 60, nine in ten at most 180', () => {
  expect(sizeFaults(sources())).toEqual([]);
});

test('names say what is inside, and nothing is exported without a name', () => {
  expect(nameFaults(sources())).toEqual([]);
});

function long(path: string, count: number): Source {
  return { path, text: 'a;\n'.repeat(count) };
}
const short = Array.from({ length: 20 }, (_, i) => long(`src/values/v${i}.ts`, 20));

describe('planted', () => {
  test('a file of 301 lines is reported, one of 300 is not', () => {
    expect(sizeFaults([...short, long('src/values/big.ts', 301)])).toEqual(['src/values/big.ts: 301 lines']);
    expect(sizeFaults([...short, long('src/values/big.ts', 300)])).toEqual([]);
    expect(lines({ path: 'a', text: 'one\ntwo' })).toBe(2);
    expect(lines({ path: 'a', text: '' })).toBe(0);
  });

  test('many middling files are reported', () => {
    const middling = Array.from({ length: 21 }, (_, i) => long(`src/values/m${i}.ts`, 61));
    expect(sizeFaults([...short, ...middling])).toEqual(['the median file has 61 lines']);
  });

  test('too many long files are reported', () => {
    const many = Array.from({ length: 3 }, (_, i) => long(`src/values/m${i}.ts`, 181));
    expect(sizeFaults([...short, ...many])).toEqual(['one file in ten has over 181 lines']);
  });

  test.each([
    ['src/utils/x.ts', ''],
    ['src/values/helpers.ts', ''],
    ['src/values/common/x.ts', ''],
    ['src/call/misc.ts', ''],
    ['src/call/x.ts', 'export default 5;'],
    ['src/call/x.ts', 'const x = 5;\nexport { x as default };'],
  ])('%s %s is reported', (path, text) => {
    expect(nameFaults([{ path, text }]).length).toBe(1);
  });

  test('a name that only begins so is none', () => {
    expect(
      nameFaults([
        { path: 'src/rulebase/common-words.ts', text: "// export default\nconst a = 'export default';" },
      ]),
    ).toEqual([]);
  });
});
