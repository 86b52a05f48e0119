import { describe, expect, test } from 'vitest';
import {
  canBeStandard,
  type Pairing,
  type PoeKind,
  pairing,
  sourceKind,
} from '../../../src/arithmetic/power/poe-kind.js';
import { voltage } from './given.js';
import { powerRow } from './references.js';

describe('the kind of a source', () => {
  // Managed-switch manual, PoE chapter (d-detect): a standard port asks first, then gives 44 to 57 V.
  test('may be standard only with the volts of a standard port', () => {
    const [least, most] = powerRow<{ power_v: [number, number] }>('d-detect').power_v;
    expect(canBeStandard(voltage(`${least}-${most} V`))).toBe(true);
    expect(canBeStandard(voltage(`${least - 1} V`))).toBe(false);
    expect(canBeStandard(voltage(`${most + 1} V`))).toBe(false);
    expect(canBeStandard(voltage('24-48 V'))).toBe(true);
  });

  test.each<[PoeKind | undefined, string, PoeKind | undefined]>([
    [undefined, '24 V', 'passive'],
    [undefined, '12 V', 'passive'],
    [undefined, '48 V', undefined],
    ['standard', '48 V', 'standard'],
    ['passive', '48 V', 'passive'],
  ])('said %s with %s is %s', (said, text, kind) => {
    expect(sourceKind(said, voltage(text))).toBe(kind);
  });

  test.each<[PoeKind | undefined, PoeKind | undefined, string | undefined, Pairing]>([
    ['standard', 'standard', undefined, 'standard'],
    ['standard', undefined, '48 V', 'standard'],
    ['passive', 'passive', '24 V', 'passive'],
    [undefined, 'passive', '24 V', 'passive'],
    ['passive', 'standard', undefined, 'mixed'],
    ['standard', 'passive', undefined, 'mixed'],
    [undefined, 'standard', '24 V', 'mixed'],
    [undefined, 'standard', '48 V', 'source-unsure'],
    [undefined, undefined, undefined, 'source-unsure'],
    ['passive', undefined, undefined, 'camera-unsure'],
    ['standard', 'standard', '24 V', 'volts-disagree'],
  ])('source %s, camera %s, %s: %s', (source, camera, text, pair) => {
    expect(pairing(source, camera, text === undefined ? undefined : voltage(text))).toBe(pair);
  });
});
