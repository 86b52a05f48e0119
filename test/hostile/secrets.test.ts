import { describe, expect, it } from 'vitest';
import { ticketOf } from '../../src/call/ticket-of.js';
import { callWith, eventsWith } from './typed-into-a-call.js';

const TICKETS = 500;

/** Numbers below a limit from a seed, the same everywhere (a linear congruential generator, Numerical Recipes). */
function seeded(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * below);
  };
}

type Pick = (below: number) => number;
const from = (pick: Pick, letters: string, length: number): string =>
  Array.from({ length }, () => letters[pick(letters.length)]).join('');
const HEX = '0123456789ABCDEF';
const DIGITS = '0123456789';
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** A sentence with a secret in it, and what must not come out: without the last four of a serial or MAC. */
const SECRETS: readonly ((pick: Pick) => readonly [string, string])[] = [
  (pick) => {
    const pairs = Array.from({ length: 6 }, () => from(pick, HEX, 2));
    const separator = [':', '-'][pick(2)] ?? ':';
    return [`its MAC is ${pairs.join(separator)} on the label`, pairs.slice(0, 4).join(separator)];
  },
  (pick) => {
    const serial = `${from(pick, LETTERS, 2)}${from(pick, DIGITS, 9)}`;
    return [`serial number ${serial}, it says`, serial.slice(0, 7)];
  },
  (pick) => {
    const name = `${from(pick, 'abcdefgh', 6)}.${from(pick, 'abcdefgh', 5)}`;
    return [`write to ${name}@mail.example please`, name];
  },
  (pick) => {
    const number = `0${from(pick, '123456789', 3)} ${from(pick, DIGITS, 3)} ${from(pick, DIGITS, 4)}`;
    return [`ring me on ${number} after five`, number];
  },
  (pick) => {
    const number = `+44 ${from(pick, '123456789', 4)} ${from(pick, DIGITS, 6)}`;
    return [`my mobile: ${number}`, number.slice(4)];
  },
  (pick) => {
    const key = `${from(pick, 'abcdefghijk', 4)}${from(pick, DIGITS, 3)}${from(pick, LETTERS, 3)}`;
    return [`the Wi-Fi key: ${key}`, key];
  },
  (pick) => {
    const word = `${from(pick, 'abcdefghijk', 5)}${from(pick, DIGITS, 3)}`;
    return [`password: ${word}`, word];
  },
  (pick) => {
    const host = 1 + pick(250);
    return [`it came from 203.0.113.${host} they said`, `203.0.113.${host}`];
  },
  (pick) => {
    const tail = from(pick, '123456789abcdef', 4);
    return [`its address is 2001:db8:aa:bb::${tail} outside`, `db8:aa:bb::${tail}`];
  },
];

describe('secrets planted in five hundred tickets', () => {
  it('come out of none of them, while the sums stay legible', async () => {
    for (let seed = 1; seed <= TICKETS; seed++) {
      const pick = seeded(seed * 7919);
      const planted: string[] = [];
      const events = eventsWith(() => {
        const [sentence, secret] = SECRETS[pick(SECRETS.length)]?.(pick) ?? ['', ''];
        planted.push(secret);
        return sentence;
      });
      const ticket = ticketOf(await callWith(events));
      for (const secret of planted) expect(ticket.includes(secret), `seed ${seed}: ${secret}`).toBe(false);
      expect(ticket).toContain('172.23.40.21');
      expect(ticket).toContain('255.255.255.0');
    }
  }, 120_000);

  it('mask a public address that was given as the answer to a question', async () => {
    const call = await callWith(eventsWith(() => 'words', ['203.0.113.21', '198.51.100.1']));
    const ticket = ticketOf(call);
    expect(ticket).not.toContain('203.0.113.21');
    expect(ticket).not.toContain('198.51.100.1');
  });

  it('are there when the ticket is asked for unmasked', async () => {
    const call = await callWith(eventsWith(() => 'serial number QX123456789'));
    expect(ticketOf(call, { unmasked: true })).toContain('QX123456789');
  });
});
