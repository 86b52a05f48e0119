import { describe, expect, it } from 'vitest';
import { replay } from '../../src/call/call.js';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import { DIGEST } from '../call/play.js';
import { TINY } from '../call/tiny-rule-base.js';

const SCRIPT: Script = {
  title: 'a plug pulled out',
  story: 'The cleaner pulled the plug.',
  opened: '2026-11-25T08:30:00.000Z',
  role: 'desk',
  answers: { 'at-site': 'here', lights: 'off', socket: 'dead' },
  remedies: { 'plug-in': { took: 'yes', picture: 'yes' } },
};

const play = (script: Partial<Script>): ReturnType<typeof playScript> =>
  playScript(TINY, DIGEST, { ...SCRIPT, ...script }, 'quay-7');

describe('a call with a caller who is written down', () => {
  it('ends, with every event twenty seconds after the last', async () => {
    const { header, events, call } = await play({});
    expect(header).toMatchObject({
      id: 'quay-7',
      opened: SCRIPT.opened,
      role: 'desk',
      rules: { digest: DIGEST },
    });
    expect(call.state.closed).toBe('picture-back');
    expect(call.state.trials.at(-1)).toEqual({ remedy: 'plug-in', took: 'yes', picture: 'yes' });
    expect(events.map(({ at }) => at.slice(11, 19)).slice(0, 2)).toEqual(['08:30:20', '08:30:40']);
  });

  it('plays again from its events to the same call', async () => {
    const { header, events, call } = await play({});
    const again = await replay(TINY, DIGEST, header, events);
    expect(again.ok && again.value.state).toEqual(call.state);
  });

  it('answers "can\'t tell" where nothing is written down, and passes over what can\'t be done', async () => {
    const { events } = await play({ answers: { 'at-site': 'here' }, remedies: {} });
    expect(events).toContainEqual(expect.objectContaining({ question: 'lights', answer: null }));
    expect(events).toContainEqual(expect.objectContaining({ type: 'passed-over' }));
    expect(events.at(-1)).toMatchObject({ type: 'closed', how: 'visit' });
  });

  it('takes an answer back, and keeps notes, where the script says so', async () => {
    const { call } = await play({
      corrections: [{ after: 'lights', question: 'at-site', answer: 'gone' }],
      notes: [{ after: 'at-site', text: 'Speaks from the boat.' }],
    });
    expect(call.state.notes).toEqual(['Speaks from the boat.']);
    expect(call.state.history.filter(({ question }) => question === 'at-site')).toHaveLength(2);
  });

  it('is stopped after so many events, even where a note comes in between', async () => {
    const notes = [{ after: 'at-site', text: 'Speaks from the boat.' }];
    const { events } = await play({ notes, stopAfter: 1 });
    expect(events.map(({ type }) => type)).toEqual(['answered', 'noted', 'closed']);
    expect(events.at(-1)).toMatchObject({ how: 'stopped' });
  });

  it('ends at once where the caller may not ask', async () => {
    const { events } = await play({ answers: { 'at-site': 'stranger' } });
    expect(events.map(({ type }) => type)).toEqual(['answered', 'closed']);
  });

  it('throws where it never ends: a caller who says again and again what cannot both be', async () => {
    const corrections = [
      { after: 'lights', question: 'other-phone', answer: true },
      { after: 'dark-yet-open', question: 'other-phone', answer: true },
    ];
    await expect(play({ corrections })).rejects.toThrow('a plug pulled out: the call never ends');
  });

  it('throws where an answer does not fit its question', async () => {
    await expect(play({ answers: { 'at-site': 'moon' } })).rejects.toThrow(
      'a plug pulled out: The answer to "at-site" has to be one of these',
    );
  });
});
