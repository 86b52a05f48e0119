import { describe, expect, it } from 'vitest';
import type { CallEvent } from '../../src/call/events.js';
import { type Held, holdCall } from '../../src/cli/hold-call.js';
import { MachineFault } from '../../src/files/faults.js';
import type { RecordWriter } from '../../src/files/record-writer.js';
import { AT, replayed, said } from '../call/play.js';
import { type Answerer, asking, command, one, type Put, quietTerminal, some, text } from './desk.js';

interface Talk extends Held {
  readonly events: readonly CallEvent[];
  readonly told: string;
  readonly put: readonly Put[];
}

interface Around {
  /** What has happened in the call already. */
  readonly before?: readonly CallEvent[];
  readonly append?: () => void;
  readonly read?: (file: string) => string | undefined;
}

/** Holds a call of the tiny rule base with these replies, which have to be just enough. */
async function hold(replies: readonly Answerer[], { before = [], append, read }: Around = {}): Promise<Talk> {
  const { terminal, told } = quietTerminal();
  const { ask, put, left } = asking(replies);
  const events: CallEvent[] = [];
  const writer: RecordWriter = {
    path: 'call.jsonl',
    append: (event) => {
      append?.();
      events.push(event);
    },
    close: () => undefined,
  };
  const reader = read ? { read } : {};
  const held = await holdCall({ terminal, ask, writer, now: () => AT, ...reader }, await replayed(before));
  expect(left()).toBe(0);
  return { ...held, events, told: told(), put };
}

const STOP: readonly Answerer[] = [command('stop'), one('ticket')];
const kinds = ({ events }: Talk): readonly string[] => events.map((event) => event.type);
const choicesOf = (put: Put | undefined): readonly string[] =>
  put && 'choices' in put.input ? put.input.choices.map(({ id }) => id) : [];

describe('a call on a terminal', () => {
  it('goes from the first question to the picture, each event kept before the next step', async () => {
    const talk = await hold([
      one('here'),
      one('off'),
      one('dark'),
      one('no'),
      one('agrees'),
      one('back'),
      one('close'),
    ]);
    expect(kinds(talk)).toEqual(['answered', 'answered', 'tried', 'agreed', 'tried', 'closed']);
    expect(talk.closed).toBe(true);
    expect(talk.call.state.trials).toEqual([
      { remedy: 'jiggle', took: 'no', picture: 'no' },
      { remedy: 'plug-in', took: 'yes', picture: 'yes' },
    ]);
    for (const words of [
      'Say at-site?',
      'How to find lights.',
      'Do jiggle.',
      'Did jiggle take?',
      'Make sure of this',
      'Do plug-in.',
    ])
      expect(talk.told).toContain(words);
  });

  it('is the call that its record says', async () => {
    const talk = await hold([one('here'), command('cant-tell'), command('back'), one('off'), ...STOP]);
    expect(kinds(talk)).toContain('undone');
    expect((await replayed(talk.events)).state).toEqual(talk.call.state);
  });

  it('offers going back and changing once there is something to go back to', async () => {
    const { put } = await hold([one('here'), ...STOP]);
    const offered = put.map(({ commands }) => commands.map(({ id }) => id));
    expect(offered[0]).toEqual(['cant-tell', 'note', 'why', 'other', 'view', 'stop']);
    expect(offered[1]).toEqual(['cant-tell', 'back', 'change', 'note', 'why', 'other', 'view', 'stop']);
  });

  it('has a letter of its own for each command', async () => {
    const { put } = await hold([one('here'), ...STOP]);
    const letters = put[1]?.commands.map(({ key }) => key) ?? [];
    expect(new Set(letters).size).toBe(8);
    expect(letters.every((letter) => /^[a-z]$/.test(letter))).toBe(true);
  });
});

describe('the commands', () => {
  it("can't tell is an answer", async () => {
    const { events } = await hold([command('cant-tell'), ...STOP]);
    expect(events[0]).toMatchObject({ type: 'answered', question: 'at-site', answer: null });
  });

  it('another step passes the present one over', async () => {
    const { events, told } = await hold([command('other'), ...STOP]);
    expect(events[0]).toMatchObject({ type: 'passed-over', step: 'ask:at-site' });
    expect(told).toContain('Say lights?');
  });

  it('a note is kept as it stands; an empty one, or going back, keeps none', async () => {
    const notes = [text('rang | twice'), text('  '), command('back')];
    const talk = await hold([...notes.flatMap((note) => [command('note'), note]), ...STOP]);
    expect(kinds(talk)).toEqual(['noted', 'closed']);
    expect(talk.events[0]).toMatchObject({ text: 'rang | twice' });
  });

  it('how-to opens what belongs to the remedy, likeliest first, and nothing happens', async () => {
    const asked: string[] = [];
    const read = (file: string) => {
      asked.push(file);
      return asked.length === 1 ? '# What it is\n\nRead **me**.' : undefined;
    };
    const talk = await hold([one('here'), one('off'), command('how'), ...STOP], { read });
    expect(asked[0]).toMatch(/^causes\/[a-z-]+\/[a-z-]+\.md$/);
    expect(talk.told).toContain('Read me.');
    expect(kinds(talk)).toEqual(['answered', 'answered', 'closed']);
  });

  it('how-to says so where there is nothing to read', async () => {
    const talk = await hold([one('here'), one('off'), command('how'), ...STOP]);
    expect(talk.told).toContain('nothing to read');
  });

  it('why shows the ranking, and the path its legend, and nothing happens', async () => {
    const talk = await hold([one('here'), one('off'), command('why'), command('view'), ...STOP]);
    expect(talk.told).toContain('10 db make the odds ten times higher');
    expect(talk.told).toContain('+ works   x faulty   ? suspect   . not looked at');
    expect(kinds(talk)).toEqual(['answered', 'answered', 'closed']);
  });

  it('an earlier answer is changed, the latest on top', async () => {
    const talk = await hold([one('here'), one('on'), command('change'), one('lights'), one('off'), ...STOP]);
    expect(choicesOf(talk.put[3])).toEqual(['', 'lights', 'at-site']);
    expect(talk.told).toContain('Say lights?');
    expect(talk.call.state.answers.get('lights')?.value).toEqual({ kind: 'choice', id: 'off' });
  });

  it('a change can be left, before and after it is chosen', async () => {
    const changes = [command('change'), one(''), command('change'), one('at-site'), command('back')];
    expect(kinds(await hold([one('here'), ...changes, ...STOP]))).toEqual(['answered', 'closed']);
  });

  it('stop closes with a ticket, leaves the call open, or goes on', async () => {
    const stopped = await hold([command('stop'), one('ticket')]);
    expect([stopped.closed, stopped.call.state.closed]).toEqual([true, 'stopped']);
    const left = await hold([command('stop'), one('later')]);
    expect([left.closed, left.events]).toEqual([false, []]);
    const on = await hold([command('stop'), one('back'), one('stranger'), one('close')]);
    expect(on.call.state.closed).toBe('out-of-scope');
  });
});

describe('the steps', () => {
  it('two answers that do not go together: one is changed, or both stay', async () => {
    // The other phone is no question of the opening, so it is answered beforehand.
    const before = [said('at-site', 'here'), said('lights', 'off'), said('other-phone', true)];
    const stay = await hold([one('keep'), ...STOP], { before });
    expect(stay.events[0]).toMatchObject({ type: 'kept', contradiction: 'dark-yet-open' });
    const changed = await hold([one('change:lights'), one('on'), ...STOP], { before });
    expect(changed.events[0]).toMatchObject({ type: 'answered', question: 'lights', answer: 'on' });
  });

  it('a number is read back: agreed, changed, or left as it is', async () => {
    const numbers = {
      'camera-address': '172.23.40.57',
      'camera-mask': '255.255.255.0',
      'camera-gateway': '172.23.41.1',
    };
    const before = [
      said('at-site', 'here'),
      said('lights', 'on'),
      ...Object.entries(numbers).map(([id, number]) => said(id, number)),
    ];
    const agrees = await hold([one('agrees'), ...STOP], { before });
    expect(agrees.events[0]).toMatchObject({ type: 'agreed', question: 'camera-address' });
    const differs = await hold([one('differs'), text('172.23.41.57'), ...STOP], { before });
    expect(differs.events[0]).toMatchObject({ question: 'camera-address', answer: '172.23.41.57' });
    const leave = await hold([one('leave'), ...STOP], { before });
    expect(leave.call.step).toMatchObject({ kind: 'read-back', question: 'camera-gateway' });
  });

  it.each(['put-right', 'left'])('a spoilt check is dealt with: %s', async (outcome) => {
    const before = [
      said('at-site', 'here'),
      said('lights', 'off'),
      said('socket', 'dead'),
      said('loose', true),
    ];
    const { events } = await hold([one(outcome), ...STOP], { before });
    expect(events[0]).toMatchObject({ type: 'tester-dealt', fault: 'plug-loose', outcome });
  });

  it("a remedy that can't be done is passed over", async () => {
    const { events } = await hold([one('here'), one('off'), one('not-now'), ...STOP]);
    expect(events[2]).toMatchObject({ type: 'passed-over', step: 'try:jiggle' });
  });

  it.each(['yes', 'no', 'cant-tell'])(
    'a remedy that left the picture dark is asked about: %s',
    async (took) => {
      const { events } = await hold([one('here'), one('off'), one('dark'), one(took), ...STOP]);
      expect(events[2]).toMatchObject({ type: 'tried', remedy: 'jiggle', took, picture: 'no' });
    },
  );

  it.each(['stranger', 'doorbell'])('a call that ends at once is closed: %s', async (answer) => {
    const { call } = await hold([one(answer), one('close')]);
    expect(call.state.closed).toBe('out-of-scope');
  });

  it('a typed answer that does not fit is told what to write before it is taken', async () => {
    let wrong: string | undefined;
    const retype = (put: Put): ReturnType<typeof text> => {
      wrong = put.wrong?.('172.23.40.257');
      return text('172.23.40.58');
    };
    const before = [said('camera-address', '172.23.40.57')];
    const { call } = await hold([command('change'), one('camera-address'), retype, ...STOP], { before });
    expect(wrong).toContain('257');
    expect(call.state.history).toHaveLength(2);
  });

  it('several answers come as a list', async () => {
    const before = [said('kit', ['ladder'])];
    const { call } = await hold([command('change'), one('kit'), some('patch-lead', 'ladder'), ...STOP], {
      before,
    });
    expect([...call.situation.kit]).toEqual(['patch-lead', 'ladder']);
  });
});

describe("a record that can't be kept", () => {
  it('is told, and what was answered before stays kept', async () => {
    let room = 1;
    const append = (): void => {
      if (room-- <= 0) throw new MachineFault({ id: 'files.full', with: { path: 'call.jsonl' } });
    };
    const failed = hold([one('here'), one('off')], { append });
    await expect(failed).rejects.toMatchObject({ exit: 3 });
    await expect(failed).rejects.toThrow('Nothing answered before is lost; the last answer was not kept.');
  });
});
