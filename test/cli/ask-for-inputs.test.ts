import { Writable } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { FREE_ADDRESS } from '../../src/arithmetic/topics/free-address.js';
import { REACH } from '../../src/arithmetic/topics/reach.js';
import { SUBNET } from '../../src/arithmetic/topics/subnet.js';
import type { Given, Topic } from '../../src/arithmetic/topics/topic.js';
import type { Ask, Terminal } from '../../src/cli/ask.js';
import { askForInputs } from '../../src/cli/ask-for-inputs.js';

/** Types these answers one after the other; a text that is refused is followed by the next, as a person would. */
async function asked(topic: Topic, given: Given, replies: readonly string[]) {
  const rest = [...replies];
  const complaints: string[] = [];
  let shown = '';
  const output = new Writable({
    write(chunk, _, done) {
      shown += String(chunk);
      done();
    },
  });
  const ask: Ask = async (input, _commands, wrong) => {
    for (;;) {
      const reply = rest.shift();
      if (reply === undefined) throw new Error(`nothing left to type after:\n${shown}`);
      if (input.kind !== 'field') return { kind: 'one', id: reply };
      const complaint = wrong?.(reply);
      if (complaint === undefined) return { kind: 'text', text: reply };
      complaints.push(complaint);
    }
  };
  const terminal = { output, input: process.stdin, paint: (_: string, text: string) => text };
  const result = await askForInputs(topic, given, terminal as unknown as Terminal, ask);
  return { given: result, complaints, shown, rest };
}

describe('asking for what a sum needs', () => {
  test('asks for what was not given, in order, and leaves out what is left empty', async () => {
    const { given, shown, rest } = await asked(SUBNET, { mask: '/24' }, ['172.23.40.57', '', '172.23.40.9']);
    expect(given).toEqual({ mask: '/24', address: '172.23.40.57', other: '172.23.40.9' });
    expect(shown).not.toContain('What is its subnet mask?');
    expect(shown).toContain('What is its default gateway?\nEnter with nothing typed leaves it out.\n');
    expect(rest).toEqual([]);
  });

  test('refuses at once what cannot be read, with what to write instead', async () => {
    const { given, complaints } = await asked(SUBNET, {}, [
      '',
      '172.23.40',
      '172.23.40.57',
      '/33',
      '24',
      '',
      '',
    ]);
    expect(given).toEqual({ address: '172.23.40.57', mask: '24' });
    expect(complaints).toEqual([
      'This one is needed.',
      expect.stringContaining('has only 3 of the four numbers'),
      'The mask /33 is too big. The number after the slash is 0 to 32, such as /24.',
    ]);
  });

  test('asks again for an option that cannot be read', async () => {
    const { given, shown } = await asked(SUBNET, { address: '172.23.40', mask: '/24' }, [
      '',
      '',
      '172.23.40.57',
    ]);
    expect(given.address).toBe('172.23.40.57');
    expect(shown).toContain('has only 3 of the four numbers');
  });

  test('offers "can\'t tell" in a choice that may be left out', async () => {
    const start = Object.fromEntries(
      REACH.inputs.flatMap(({ id, optional }) =>
        optional ? [] : [[id, id.endsWith('mask') ? '/24' : '172.23.40.1']],
      ),
    );
    const { given } = await asked(REACH, start, ['same', '', 'no']);
    expect(given['same-segment']).toBe('same');
    expect('isolation' in given).toBe(false);
    expect(given['stateful-router']).toBe('no');
  });

  test('does not hand an empty text to the sum, which knows what is missing only when it is not there', async () => {
    const strict: Topic = {
      ...SUBNET,
      inputs: [{ id: 'gateway', ask: 'reckon.ask-gateway', optional: true }],
      reckon: ({ gateway }) =>
        gateway === ''
          ? { ok: false, problem: { id: 'typed.empty' }, input: 'gateway' }
          : { ok: true, value: { lines: [], data: {} } },
    };
    expect(await asked(strict, {}, [''])).toMatchObject({ given: {}, complaints: [] });
  });

  test('asks nothing when all is there', async () => {
    const all = {
      'router-address': '172.23.40.1',
      'router-mask': '/24',
      'dhcp-first': 'none',
      'dhcp-last': 'none',
      known: '',
    };
    expect((await asked(FREE_ADDRESS, all, [])).shown).toBe('');
  });
});
