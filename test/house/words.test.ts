import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../src/messages/english.js';
import { sources } from './source.js';
import { fillingFaults, shouted, type Templates } from './words.js';

test('no sentence shouts', () => {
  expect(shouted(ENGLISH)).toEqual([]);
  expect(shouted({ a: 'Stop!', b: 'Stop.' })).toEqual(['a']);
});

test('every filling written out fits the placeholders of its sentence', () => {
  expect(fillingFaults(sources(), ENGLISH)).toEqual([]);
});

describe('a planted filling', () => {
  const templates: Templates = { 'a.plain': 'Plain.', 'a.two': '{one} and {two}.' };
  const faults = (text: string): readonly string[] =>
    fillingFaults([{ path: 'x', text }], templates).map((fault) => fault.replace(/^x: /, ''));

  test.each([
    ["say('a.gone')", 'a.gone: no such sentence'],
    ["say('a.plain', { one: 1 })", 'a.plain: {one} stands nowhere in it'],
    ["say('a.two', { one })", 'a.two: {two} is not filled'],
    ["say('a.two', {\n  one: f({ two: 1 }),\n})", 'a.two: {two} is not filled'],
    ["say('a.two')", 'a.two: {one} is not filled'],
    ["({ id: 'a.two', with: { one: 1, three: [1, 2] } })", 'a.two: {three} stands nowhere in it'],
    ["say('a.two', { ...rest, three: '}' })", 'a.two: {three} stands nowhere in it'],
  ])('%s is reported', (text, fault) => {
    expect(faults(text)).toContain(fault);
  });

  test.each([
    "say('a.plain')",
    "say('a.two', { one: say('a.plain'), two })",
    "say('a.two', filling)",
    "say('a.two', { ...rest, one })",
    `({ id: 'a.two', with: { one: \`a, \${b}\`, two: g(1, 2) } })`,
    "({ id: 'a.two', with: said })",
    // A sentence that is kept may be filled up later.
    "({ id: 'a.two' })",
    "({ id: 'a.two', with: { one } })",
    "({ id: 'stranger', title: 'x' })",
    "// say('a.gone')",
  ])('%s is not', (text) => {
    expect(faults(text)).toEqual([]);
  });
});
