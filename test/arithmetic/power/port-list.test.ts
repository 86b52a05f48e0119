import { describe, expect, test } from 'vitest';
import { type PortUse, parsePort, parsePorts } from '../../../src/arithmetic/power/port-list.js';

/** A port as short text: number, class, watts, priority. */
function shown({ port, poeClass, watts, priority }: PortUse): string {
  return [port, poeClass?.number ?? '-', watts ? `${watts.least}-${watts.most}` : '-', priority].join(' ');
}

function ports(text: string): string {
  const parsed = parsePorts(text);
  return parsed.ok ? parsed.value.map(shown).join('; ') : parsed.problem.id;
}

describe('the ports of a switch', () => {
  test.each([
    ['1 class 3 6.4 W', '1 3 6.4-6.4 low'],
    ['port 1: class 3, 2 class 4 high', '1 3 - low; 2 4 - high'],
    ['1 6,4 W; 2 3-5 W', '1 - 6.4-6.4 low; 2 - 3-5 low'],
    ['1 c3; 2 class 0 critical 5 W', '1 3 - low; 2 0 5-5 critical'],
    ['1 ?; 2 class 2 ?', '1 - - low; 2 2 - low'],
    ['#7 class 1 low priority', '7 1 - low'],
    ['1\n2\n3', '1 - - low; 2 - - low; 3 - - low'],
    ['12 3 W', '12 - 3-3 low'],
  ])('%j', (text, expected) => {
    expect(ports(text)).toBe(expected);
  });

  test.each([
    ['', 'typed.empty'],
    ['class 3', 'measure.port-number'],
    ['6.4 W', 'measure.port-number'],
    ['1 class 3; 1 class 2', 'measure.port-twice'],
    ['1 class 9', 'measure.port-unclear'],
    ['1 12', 'measure.port-unclear'],
    ['1 upstairs', 'measure.port-unclear'],
    ['1 900 W', 'typed.number-outside'],
  ])('%j is refused', (text, id) => {
    expect(ports(text)).toBe(id);
  });

  test('one that is to come needs no number', () => {
    const parsed = parsePort('class 3 9 W');
    expect(parsed.ok && shown(parsed.value)).toBe('0 3 9-9 low');
  });
});
