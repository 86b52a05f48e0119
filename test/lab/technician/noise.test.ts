import { describe, expect, test } from 'vitest';
import type { Look } from '../types.js';
import { ASKED, asked } from './asked.js';
import { look } from './eyes.js';
import { noisy, SHRUGS, SLIPS } from './noise.js';
import { ALL_WELL, paperLab } from './paper-lab.js';
import { misfit } from './valid.js';

const TURNS = 8000;

function said(value: string | boolean | number | readonly string[]): Look {
  return { ran: [], answer: { kind: 'value', value } };
}

/** Shares of slips and shrugs over many seeds. */
function shares(id: string, before: Look): { readonly slips: number; readonly shrugs: number } {
  let [slips, shrugs] = [0, 0];
  for (let seed = 0; seed < TURNS; seed++) {
    const { answer } = noisy(before, asked(id), seed);
    if (answer.kind === 'cant-tell') shrugs += 1;
    else if (JSON.stringify(answer) !== JSON.stringify(before.answer)) slips += 1;
  }
  return { slips: slips / TURNS, shrugs: shrugs / TURNS };
}

/** Four standard deviations of a share over so many turns. */
const within = (share: number): number => 4 * Math.sqrt((share * (1 - share)) / TURNS);

describe('noise', () => {
  test.each([
    ['port-light', said('lit')],
    ['camera-ping', said(true)],
    ['camera-address', said('172.23.40.21')],
    ['camera-mask', said('255.255.255.0')],
    ['ping-loss', said(0)],
    ['run-metres', said(20)],
    ['camera-clock-reads', said('25 Nov 2026 14:30')],
    ['kit', said(['patch-lead'])],
    ['line-dependents', said(['none'])],
  ])('of answers to %s a twentieth is wrong, and fifteen in a hundred are open', (id, before) => {
    const { slips, shrugs } = shares(id, before);
    expect(Math.abs(slips - SLIPS)).toBeLessThan(within(SLIPS));
    expect(Math.abs(shrugs - SHRUGS)).toBeLessThan(within(SHRUGS));
    expect([SLIPS, SHRUGS]).toEqual([0.05, 0.15]);
  });

  test('spares the questions that say who calls, and from where', () => {
    for (const [id, word] of [
      ['may-ask', 'yes'],
      ['at-site', 'at-site'],
    ] as const)
      expect(shares(id, said(word))).toEqual({ slips: 0, shrugs: 0 });
  });

  test('never turns a text that was pasted into another', () => {
    const before: Look = {
      ran: [],
      answer: { kind: 'paste', text: 'inet 172.23.40.131/24', from: 'this-computer' },
    };
    expect(shares('computer-address', before).slips).toBe(0);
  });

  test('gives answers that fit, and one digit off for an address', async () => {
    for (const question of ASKED) {
      const before = await look(question, paperLab(ALL_WELL).lab, {
        story: { everWorked: true, changed: 'nothing', when: 'days' },
        plain: {},
        role: 'site',
      });
      for (let seed = 0; seed < 120; seed++)
        expect(misfit(question, noisy(before, question, seed).answer)).toBeUndefined();
    }
    for (let seed = 0; seed < TURNS; seed++) {
      const { answer } = noisy(said('172.23.40.21'), asked('camera-address'), seed);
      if (answer.kind !== 'value') continue;
      const typed = `${answer.value}`;
      const off = [...typed].filter((letter, at) => letter !== '172.23.40.21'[at]).length;
      expect(typed.length === 12 && off <= 1).toBe(true);
    }
  });

  test('ends no call by a slip', () => {
    for (let seed = 0; seed < TURNS; seed++) {
      const { answer } = noisy(said('wired'), asked('camera-type'), seed);
      expect(['wired', 'wifi', undefined]).toContain(answer.kind === 'value' ? answer.value : undefined);
    }
  });

  test('is the same for the same seed and another for another', () => {
    const twice = (seed: string) => noisy(said('lit'), asked('port-light'), seed);
    expect(twice('a')).toEqual(twice('a'));
    const kinds = new Set(Array.from({ length: 200 }, (_, seed) => JSON.stringify(twice(`${seed}`).answer)));
    expect(kinds.size).toBeGreaterThan(2);
  });
});
