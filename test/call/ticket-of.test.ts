import { describe, expect, it } from 'vitest';
import type { CallEvent } from '../../src/call/events.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { AT, played, said, tried } from './play.js';

const HERE = said('at-site', 'here');
const note: CallEvent = { at: AT, type: 'noted', text: 'Rang from the harbour office.' };
const ticket = async (events: readonly CallEvent[]): Promise<string> => ticketOf(await played(events));

/** The line of the ticket that mentions something. */
const lineWith = (text: string, part: string): string =>
  text.split('\n').find((line) => line.includes(part)) ?? '';

describe('the ticket of a call', () => {
  it('begins with the verdict and ends with what it was made with', async () => {
    const text = await ticket([HERE, said('lights', 'off'), said('socket', 'dead')]);
    expect(text.split('\n')[0]).toContain('Verdict of supply-off.');
    expect(text).toContain('quay-1');
    expect(text).toContain('d'.repeat(12));
  });

  it('says what was asked and answered, "can\'t tell" too, and how it is known', async () => {
    const text = await ticket([
      HERE,
      said('lights', null),
      { ...said('socket', 'dead'), origin: 'pasted' } as CallEvent,
    ]);
    expect(lineWith(text, '| Title of lights ')).toMatch(/can.?t tell/i);
    expect(lineWith(text, '| Title of socket ')).toContain('it is dead');
    expect(lineWith(text, '| Title of socket ')).toContain('pasted');
  });

  it('keeps an answer that was corrected apart from the one that holds', async () => {
    const text = await ticket([HERE, said('lights', 'on'), said('lights', 'off')]);
    const [now, before] = ['it is off', 'it is on'].map((answer) =>
      text.indexOf(`Title of lights | ${answer}`),
    );
    expect(now).toBeGreaterThan(0);
    expect(before).toBeGreaterThan(now ?? 0);
  });

  it('says what was tried, how it was left, and what the caller said', async () => {
    const text = await ticket([
      HERE,
      said('their-words', 'all black since Tuesday'),
      said('lights', 'off'),
      note,
      tried('jiggle', 'no'),
    ]);
    expect(text).toContain('jiggle is done.');
    expect(text).toContain('all black since Tuesday');
    expect(text).toContain('Rang from the harbour office.');
  });

  it('is the same text every time', async () => {
    const events = [HERE, said('lights', 'off'), tried('jiggle', 'yes'), note];
    expect(await ticket(events)).toBe(await ticket(events));
  });
});
