import { describe, expect, it } from 'vitest';
import { advance, type Call, openCall } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import { answersFrom, pasteEvent } from '../../src/call/from-paste.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { readPaste } from '../../src/intake/paste.js';
import { inWords } from '../../src/messages/say.js';
import { AT, DIGEST, headerFor, said } from '../call/play.js';
import { READING } from '../call/reading-base.js';
import { lineWith, PRIVATE, SITE } from '../intake/a-site.js';

const TAKEN = { isHere: true, adapter: 0 };

/** A call in which this text is pasted, and its record as it would be written. */
async function pastedCall(
  text: string,
  origin: 'pasted' | 'read',
  more: readonly CallEvent[] = [],
): Promise<{ readonly call: Call; readonly record: string }> {
  let call = await openCall(READING, DIGEST, headerFor('desk', READING));
  const paste = readPaste(text);
  const answers = answersFrom(READING, paste, TAKEN, undefined);
  const pasted: CallEvent = { at: AT, ...pasteEvent(call.state, paste, answers, TAKEN, origin) };
  for (const event of [said('at-site', 'here'), pasted, ...more]) {
    const next = await advance(call, event);
    if (!next.ok) throw new Error(inWords(next.problem));
    call = next.value;
  }
  return { call, record: call.state.events.map((event) => JSON.stringify(event)).join('\n') };
}

const row = (ticket: string, title: string): string =>
  ticket.split('\n').find((line) => line.startsWith(`| ${title} `)) ?? '';

describe('the ticket of a call into which a text was pasted', () => {
  it('says of each answer that it was pasted, and on which line', async () => {
    const ticket = ticketOf((await pastedCall(SITE, 'pasted')).call);
    const address = lineWith('IP address:');
    expect(row(ticket, 'Title of camera-address')).toContain(`172.23.40.57 | pasted, line ${address} |`);
    expect(row(ticket, 'Title of camera-mask')).toContain(`255.255.255.0 | pasted, line ${address} |`);
    expect(row(ticket, 'Title of camera-gateway')).toContain(
      `172.23.41.1 | pasted, line ${lineWith('172.23.41.1')} |`,
    );
    expect(row(ticket, 'Title of at-site')).toContain('| said |');
  });

  it('says so of what was read from the computer, too', async () => {
    const ticket = ticketOf((await pastedCall(SITE, 'read')).call);
    expect(row(ticket, 'Title of loose')).toContain(`read from the computer, line ${lineWith('Pinging')} |`);
  });

  it('says of an answer that was corrected by word of mouth that it was said, and keeps the pasted one apart', async () => {
    const { call } = await pastedCall(SITE, 'pasted', [said('camera-gateway', '172.23.40.1')]);
    const rows = ticketOf(call)
      .split('\n')
      .filter((line) => line.startsWith('| Title of camera-gateway '));
    expect(rows).toEqual([
      '| Title of camera-gateway | 172.23.40.1 | said |',
      `| Title of camera-gateway | 172.23.41.1 | pasted, line ${lineWith('172.23.41.1')} |`,
    ]);
  });

  it('calls proven what the pasted numbers show', async () => {
    const ticket = ticketOf((await pastedCall(SITE, 'pasted')).call);
    expect(ticket).toContain('- *Proven*: The gateway 172.23.41.1 is outside.');
  });
});

describe('what a text holds of people and of devices', () => {
  it('stands in it to begin with', () => {
    for (const secret of PRIVATE) expect(SITE.toLowerCase()).toContain(secret);
  });

  it.each(['pasted', 'read'] as const)(
    'stands neither in the record nor in any ticket when it was %s',
    async (origin) => {
      const { call, record } = await pastedCall(SITE, origin);
      const all = [record, ticketOf(call), ticketOf(call, { unmasked: true })].map((text) =>
        text.toLowerCase(),
      );
      for (const text of all) for (const secret of PRIVATE) expect(text).not.toContain(secret);
    },
  );

  it('stands neither in a note of what stood out', async () => {
    const twice = SITE.replace(
      '172.23.40.255         ff-ff-ff-ff-ff-ff',
      '172.23.40.57          02-00-5e-10-00-99',
    );
    const { call, record } = await pastedCall(twice, 'pasted');
    expect(call.state.notes.join()).toContain('Two devices answer at 172.23.40.57');
    for (const text of [record, ticketOf(call, { unmasked: true })]) {
      expect(text).not.toContain('02:00:5e');
      expect(text).not.toContain('02-00-5e');
    }
  });

  it('is hidden without losing the lines to look up', async () => {
    const { call } = await pastedCall(SITE, 'pasted');
    const event = call.state.events.find(({ type }) => type === 'pasted');
    const lines = event?.type === 'pasted' ? event.text.split('\n') : [];
    expect(lines[lineWith('172.23.41.1') - 1]).toBe('Default gateway: 172.23.41.1');
    expect(lines).toHaveLength(SITE.split('\n').length);
  });
});
