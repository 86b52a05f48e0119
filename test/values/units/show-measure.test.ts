import { expect, test } from 'vitest';
import { between, exactly } from '../../../src/values/units/range.js';
import { showNumber, showRange } from '../../../src/values/units/show-measure.js';

test.each([
  [12.95, '12.95'],
  [45.6093, '45.61'],
  [0.283931, '0.2839'],
  [0.00001374, '0'],
  [0.0176, '0.0176'],
  [-20, '−20'],
  [0, '0'],
  [100, '100'],
])('%d is shown as %s', (value, shown) => {
  expect(showNumber(value)).toBe(shown);
});

test.each([
  [between(90, 60), '60–90'],
  [exactly(60), '60'],
  [between(12.9499, 12.9501), '12.95'],
  [between(-20, 60), '−20…60'],
])('the range %j is shown as %s', (range, shown) => {
  expect(showRange(range)).toBe(shown);
});
