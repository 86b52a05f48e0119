import { expect, test } from 'vitest';
import { isNewer, isVersion } from '../../../src/call/record/version.js';

// Semantic Versioning 2.0.0, section 11.2: 1.0.0 < 2.0.0 < 2.1.0 < 2.1.1; section 2 for 1.10.0 after 1.9.0.
test.each([
  ['2.0.0', '1.0.0'],
  ['2.1.0', '2.0.0'],
  ['2.1.1', '2.1.0'],
  ['1.10.0', '1.9.0'],
])('%s is newer than %s', (newer, older) => {
  expect(isNewer(newer, older)).toBe(true);
  expect(isNewer(older, newer)).toBe(false);
  expect(isNewer(newer, newer)).toBe(false);
});

// Examples of Semantic Versioning 2.0.0, sections 9 and 10.
test.each(['1.0.0-alpha', '1.0.0-alpha.1', '1.0.0-0.3.7', '1.0.0-alpha+001', '1.0.0+20130313144700'])(
  '%s is a version',
  (version) => expect(isVersion(version)).toBe(true),
);

// Section 2: three parts, no leading zeroes.
test.each(['1.0', '01.0.0', '1.0.0.0', 'v1.0.0', '', '1.0.0 ', 1])('%s is none', (version) =>
  expect(isVersion(version)).toBe(false),
);
