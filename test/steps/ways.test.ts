import { expect, test } from 'vitest';
import { placeAfter, visitMinutes, wayMinutes } from '../../src/steps/ways.js';
import { MANIFEST } from '../ranking/literals.js';

/** A phone is at hand wherever one stands on the site, but for the ladder. */
const PHONE = { id: 'phone', title: 'With the phone', within: ['site', 'computer', 'cabinet'] };
const WITH_PHONE = { ...MANIFEST, places: [...MANIFEST.places, PHONE] };

test.each([
  ['site', 'camera', 12],
  ['camera', 'site', 5],
  ['camera', 'camera', 0],
  ['camera', 'anywhere', 0],
  ['camera', 'desk', 0],
  ['cabinet', 'phone', 0],
  ['site', 'phone', 0],
  ['camera', 'phone', 5],
  ['desk', 'phone', 0],
] as const)('from %s to %s', (from, to, minutes) => {
  expect(wayMinutes(WITH_PHONE, from, to)).toBe(minutes);
});

test.each([
  ['camera', 'cabinet', 'cabinet'],
  ['camera', 'anywhere', 'camera'],
  ['camera', 'desk', 'camera'],
  ['cabinet', 'phone', 'cabinet'],
  ['camera', 'phone', 'site'],
] as const)('after a step at %s and one at %s one stands at %s', (from, to, place) => {
  expect(placeAfter(WITH_PHONE, from, to)).toBe(place);
});

test('a visit costs its labour and the days of waiting at their price', () => {
  const visit = { labourMinutes: 120, waitDays: 1.5, minutesPerDay: 60 };
  expect(visitMinutes({ ...MANIFEST, visit })).toBe(210);
});
