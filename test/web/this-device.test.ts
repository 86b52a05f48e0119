import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { htmlOf } from '../../src/knowledge/html.js';
import { foldSystems, systemOf } from '../../src/web/this-device.js';

test.each([
  ['Mozilla/5.0 (Windows NT 10.0; Win64; x64)', 0, 'Windows'],
  ['Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)', 0, 'macOS'],
  ['Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7)', 5, 'iOS'],
  ['Mozilla/5.0 (iPhone; CPU iPhone OS 17_0 like Mac OS X)', 5, 'iOS'],
  ['Mozilla/5.0 (Linux; Android 14; Mobile)', 5, 'Android'],
  ['Mozilla/5.0 (X11; Linux x86_64)', 0, 'Linux'],
  ['something else', 0, undefined],
])('%s with %d touch points is %s', (agent, points, system) => {
  expect(systemOf(agent, points)).toBe(system);
});

const html = htmlOf(readFileSync('knowledge/how-to/read-the-network-settings.md', 'utf8'));

test.each(['Windows', 'macOS', 'Linux', 'Android', 'iOS'] as const)(
  'of a how-to the part for %s stands open alone',
  (system) => {
    const folded = foldSystems(html, system);
    expect([...folded.matchAll(/<details open>/g)].length).toBe(1);
    expect(folded).toMatch(new RegExp(`<details open><summary><h3[^>]*>${system}</h3>`));
    expect([...folded.matchAll(/<details/g)].length).toBe(5);
    // The picture and the sources belong to all of them.
    expect(folded).toMatch(/<\/details>\s*<p><img[^>]*>\s*<\/p>\s*<h2/);
  },
);

test('folding loses no word, and where the system is not known all stands open', () => {
  const words = (text: string) => text.replace(/<[^>]+>/g, '').replace(/\s+/g, ' ');
  expect(words(foldSystems(html, 'iOS'))).toBe(words(html));
  expect(foldSystems(html, undefined)).not.toContain('<details>');
});
