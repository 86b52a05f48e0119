import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../src/messages/english.js';
import { fill } from '../../src/messages/say.js';

const FOLDER = new URL('../../src/messages/english/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.ts'));

/** Every list of every file, so that a list which was forgotten in english.ts shows too. */
const lists = (
  await Promise.all(files.map(async (name) => Object.values(await import(new URL(name, FOLDER).href))))
).flat() as readonly Readonly<Record<string, string>>[];
const entries = lists.flatMap((list) => Object.entries(list));
const ids = lists.flatMap((list) => Object.keys(list));

/** Objects in JSON, innermost first, are taken out. */
function withoutJson(text: string): string {
  const shorter = text.replace(/\{"[^"{}]+":[^{}]*\}/g, '');
  return shorter === text ? text : withoutJson(shorter);
}

describe('the English sentences', () => {
  test('stand under one id each, in one list only', () => {
    const twice = ids.filter((id, index) => ids.indexOf(id) !== index);
    expect(twice).toEqual([]);
  });

  test('are all gathered, and nothing else is', () => {
    expect(Object.keys(ENGLISH).sort()).toEqual([...ids].sort());
  });

  test('have an id of two plain parts', () => {
    expect(ids.filter((id) => !/^[a-z][a-z0-9-]*(\.[a-z0-9][a-z0-9-]*)+$/.test(id))).toEqual([]);
  });

  test.each(entries)('%s has plain placeholders only', (_, template) => {
    // Whatever braces are left would reach the reader; only an example in JSON may have them.
    const rest = template.replace(/\{[a-z][a-zA-Z0-9]*\}/g, 'filled');
    expect(withoutJson(rest)).not.toMatch(/[{}]/);
  });

  test.each(entries)('%s can stand alone', (_, template) => {
    // A space at an end means that code puts sentences together.
    expect(template).toBe(template.trim());
    expect(template).not.toBe('');
    expect(template).not.toContain('!');
  });
});

describe('filling a sentence', () => {
  test('puts every filling in its place', () => {
    expect(fill('{a} and {b}, {a}', { a: 1, b: 'two' })).toBe('1 and two, 1');
  });

  test('refuses a sentence whose filling is missing', () => {
    expect(() => fill('{a} and {b}', { a: 1 })).toThrow('{b}');
  });

  test('does not fill what a person typed in braces', () => {
    expect(fill('{a}', { a: '{b}', b: 'no' })).toBe('{b}');
  });
});
