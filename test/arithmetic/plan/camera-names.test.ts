import { describe, expect, it } from 'vitest';
import { parseCameras } from '../../../src/arithmetic/plan/camera-names.js';

const names = (text: string): unknown => {
  const parsed = parseCameras(text);
  return parsed.ok ? parsed.value : parsed.problem.id;
};

describe('the cameras of a plan', () => {
  it.each([
    ['2', ['Camera 1', 'Camera 2']],
    ['3 cameras', ['Camera 1', 'Camera 2', 'Camera 3']],
    ['Yard', ['Yard']],
    ['2 North', ['2 North']],
    ['1, 2', ['1', '2']],
    [' Yard ,, Gate\u202e, ', ['Yard', 'Gate']],
    ['Yard\r\nGate', ['Yard', 'Gate']],
  ])('read from %j', (text, expected) => {
    expect(names(text)).toEqual(expected);
  });

  it('may have names that together are longer than one answer', () => {
    const long = Array.from({ length: 20 }, (_, n) => `Warehouse north entrance ${n}`);
    expect(names(long.join(', '))).toEqual(long);
  });

  it.each([
    ['0', 'plan.cameras-wrong'],
    ['201', 'plan.cameras-wrong'],
    ['', 'plan.cameras-wrong'],
    [' , ', 'plan.cameras-wrong'],
    [Array.from({ length: 201 }, (_, n) => n).join(), 'plan.cameras-wrong'],
    ['Yard, Gate, yard', 'plan.name-twice'],
    ['x'.repeat(201), 'typed.too-long'],
  ])('are refused as %j', (text, id) => {
    expect(names(text)).toBe(id);
  });

  it('take 200 and no more', () => {
    expect(names('200')).toHaveLength(200);
    expect(names(Array.from({ length: 200 }, (_, n) => n).join())).toHaveLength(200);
  });
});
