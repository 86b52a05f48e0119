import { expect, test } from 'vitest';
import { DEMO_CALLS, holdDemoCalls } from './hold-demo-calls.js';

holdDemoCalls(DEMO_CALLS.filter((_, at) => at % 2 === 0));

test('there are calls to hold', () => {
  expect(DEMO_CALLS.length).toBeGreaterThanOrEqual(24);
});
