import { describe, expect, it } from 'vitest';
import type { CallEvent } from '../../src/call/events.js';
import { AT, kept, passedOver, played, probabilityOf, refusal, said, tried, undone } from './play.js';

const HERE = said('at-site', 'here');
const DARK = said('lights', 'off');

describe('an answer', () => {
  it('holds, stands in the history, and its stage is the subject', async () => {
    const { state } = await played([HERE, said('account', false)]);
    expect(state.answers.get('account')).toEqual({
      question: 'account',
      value: { kind: 'yes-no', yes: false },
      origin: 'said',
    });
    expect(state.history.map(({ question }) => question)).toEqual(['at-site', 'account']);
    expect(state.lastStage).toBe('sign-in');
  });

  it('can be "can\'t tell": it is not asked again, and no cause gains or loses by it', async () => {
    const before = await played([HERE]);
    const after = await played([HERE, said('lights', null)]);
    expect(after.state.answers.get('lights')?.value).toEqual({ kind: 'cant-tell' });
    expect(after.assessed.probabilities).toEqual(before.assessed.probabilities);
    expect(after.step).not.toMatchObject({ kind: 'ask', question: 'lights' });
  });

  it('is corrected by a later one, and only the later one counts', async () => {
    const corrected = await played([HERE, said('lights', 'on'), DARK]);
    const atOnce = await played([HERE, DARK]);
    expect(corrected.assessed.probabilities).toEqual(atOnce.assessed.probabilities);
    expect(corrected.state.history.filter(({ question }) => question === 'lights')).toHaveLength(2);
  });

  it('keeps its origin and its paste', async () => {
    const pasted: CallEvent = {
      at: AT,
      type: 'answered',
      question: 'camera-address',
      answer: '10.77.5.9',
      origin: 'pasted',
      paste: 'p1',
    };
    const { state } = await played([pasted]);
    expect(state.answers.get('camera-address')).toMatchObject({ origin: 'pasted', paste: 'p1' });
  });

  it.each([
    ['to a question that is not there', said('toaster', true), 'There is no question "toaster"'],
    ['that is none of the choices', said('lights', 'blinking'), 'has to be one of these: on, off'],
    ['of the wrong kind', said('account', 7), 'has to be yes or no'],
    ['out of range', said('volts', '900 V'), '60'],
  ])('%s comes back as a sentence', async (_, event, words) => {
    expect(await refusal([HERE], event)).toContain(words);
  });
});

describe('reading back', () => {
  const numbers = [HERE, said('lights', 'on'), said('camera-address', '172.23.40.57')];

  it('makes a said answer an agreed one', async () => {
    const { state } = await played([...numbers, { at: AT, type: 'agreed', question: 'camera-address' }]);
    expect(state.answers.get('camera-address')?.origin).toBe('agreed');
  });

  it('makes no pasted answer less sure than it was', async () => {
    const pasted: CallEvent = {
      at: AT,
      type: 'answered',
      question: 'camera-address',
      answer: '10.77.5.9',
      origin: 'pasted',
    };
    const { state } = await played([pasted, { at: AT, type: 'agreed', question: 'camera-address' }]);
    expect(state.answers.get('camera-address')?.origin).toBe('pasted');
  });

  it('of nothing comes back as a sentence', async () => {
    expect(await refusal([HERE], { at: AT, type: 'agreed', question: 'camera-mask' })).toContain(
      'no answer yet',
    );
  });
});

describe('taking back', () => {
  it.each<[string, CallEvent]>([
    ['an answer', said('account', false)],
    ['a note', { at: AT, type: 'noted', text: 'rang twice' }],
    ['a remedy', tried('plug-in', 'yes')],
    ['what was passed over', passedOver('ask:account')],
    ['the end of the call', { at: AT, type: 'closed', how: 'stopped' }],
    ['a move', { at: AT, type: 'moved', place: 'camera' }],
  ])('takes back %s, the last thing that held', async (_, event) => {
    const before = [HERE, DARK];
    const back = await played([...before, event, undone]);
    const never = await played(before);
    expect(back.state).toEqual(never.state);
    expect(back.step).toEqual(never.step);
  });

  it('gives a corrected answer its earlier value again', async () => {
    const { state } = await played([HERE, said('lights', 'on'), DARK, undone]);
    expect(state.answers.get('lights')?.value).toEqual({ kind: 'choice', id: 'on' });
  });

  it('twice in a row takes back two things', async () => {
    expect((await played([HERE, DARK, said('account', false), undone, undone])).state).toEqual(
      (await played([HERE])).state,
    );
  });

  it('at the beginning says so and loses nothing', async () => {
    expect(await refusal([], undone)).toBe('There is nothing to go back to yet.');
    expect(await refusal([HERE, undone], undone)).toBe('There is nothing to go back to yet.');
  });
});

describe('who is where', () => {
  it.each<[string, readonly CallEvent[], string]>([
    ['at the site to begin with', [], 'site'],
    ['where an answer says', [said('at-site', 'gone')], 'away'],
    ['at the place of the last question', [HERE, said('socket', 'live')], 'cabinet'],
    [
      'where they were, after a question for anywhere',
      [said('at-site', 'gone'), said('account', true)],
      'away',
    ],
    ['at the place of a remedy that was tried', [HERE, tried('plug-in', 'no')], 'cabinet'],
    [
      'where they were, after a remedy for anywhere',
      [said('at-site', 'gone'), tried('sign-in-again', 'no')],
      'away',
    ],
    ['where they say they went', [HERE, { at: AT, type: 'moved', place: 'camera' }], 'camera'],
  ])('%s', async (_, events, place) => {
    expect((await played(events)).state.here).toBe(place);
  });

  it('at no place that the rule base does not know', async () => {
    expect(await refusal([], { at: AT, type: 'moved', place: 'moon' })).toContain('no place "moon"');
  });
});

describe('passing over', () => {
  it('brings another step, and none that was passed over', async () => {
    const first = await played([HERE, DARK]);
    expect(first.step).toMatchObject({ kind: 'try', remedy: 'jiggle' });
    const second = await played([HERE, DARK, passedOver('try:jiggle')]);
    expect(second.step).not.toMatchObject({ remedy: 'jiggle' });
    expect(second.situation.passed).toContain('try:jiggle');
  });
});

describe('a contradiction', () => {
  const both = [HERE, DARK, said('other-phone', true)];

  it('is raised at once', async () => {
    expect((await played(both)).step).toMatchObject({
      kind: 'check-answers',
      conflict: { id: 'dark-yet-open' },
    });
  });

  it('that is left standing raises the error rate of both answers, and is not raised again', async () => {
    const before = await played(both);
    const after = await played([...both, kept('dark-yet-open')]);
    const rate = (call: typeof before): number | undefined =>
      call.assessed.settled.findings.get('life')?.errorRate;
    expect(rate(before)).toBeCloseTo(0.05, 9);
    expect(rate(after)).toBeCloseTo(0.3, 9);
    expect(after.step.kind).not.toBe('check-answers');
    expect(probabilityOf(after, 'supply-off')).toBeLessThan(probabilityOf(before, 'supply-off'));
  });

  it('that is solved later leaves no doubt on the other answer', async () => {
    const solved = await played([...both, kept('dark-yet-open'), said('other-phone', false)]);
    expect(solved.assessed.settled.findings.get('life')?.errorRate).toBeCloseTo(0.05, 9);
  });

  it('is raised anew when one of its answers is given anew and still does not fit', async () => {
    const again = await played([...both, kept('dark-yet-open'), DARK]);
    expect(again.step).toMatchObject({ kind: 'check-answers' });
  });
});

describe('a spoilt check', () => {
  const spoilt = [HERE, DARK, said('socket', 'dead'), said('loose', true)];
  const dealt = (outcome: 'put-right' | 'left'): CallEvent => ({
    at: AT,
    type: 'tester-dealt',
    fault: 'plug-loose',
    outcome,
  });

  it('is raised, and says nothing', async () => {
    const call = await played(spoilt);
    expect(call.step).toEqual({ kind: 'spoilt-check', fault: 'plug-loose' });
    expect(call.assessed.settled.findings.has('socket-state')).toBe(false);
  });

  it('put right is asked again', async () => {
    const call = await played([...spoilt, dealt('put-right')]);
    expect(call.state.answers.has('socket')).toBe(false);
    expect(call.assessed.settled.testerFaults).toEqual([]);
    expect(
      (await played([...spoilt, dealt('put-right'), said('socket', 'live')])).assessed.settled.findings.get(
        'socket-state',
      )?.value,
    ).toBe('live');
  });

  it('left as it is says nothing and is not raised again', async () => {
    const call = await played([...spoilt, dealt('left')]);
    expect(call.step.kind).not.toBe('spoilt-check');
    expect(call.assessed.settled.findings.has('socket-state')).toBe(false);
  });

  it('of another rule base comes back as a sentence', async () => {
    const other: CallEvent = { at: AT, type: 'tester-dealt', fault: 'no-such', outcome: 'left' };
    expect(await refusal(spoilt, other)).toContain('no spoilt check "no-such"');
  });
});

describe('other events', () => {
  it('keeps notes in order', async () => {
    const note = (text: string): CallEvent => ({ at: AT, type: 'noted', text });
    expect((await played([note('first'), note('second')])).state.notes).toEqual(['first', 'second']);
  });

  it.each(['picture-back', 'visit', 'stopped', 'out-of-scope'] as const)(
    'closes a call as %s',
    async (how) => {
      expect((await played([HERE, { at: AT, type: 'closed', how }])).state.closed).toBe(how);
    },
  );

  it('changes nothing on an event of a kind that only a newer version knows', async () => {
    const stranger = { at: AT, type: 'sang', tune: 7 } as unknown as CallEvent;
    const before = await played([HERE, DARK]);
    const after = await played([HERE, DARK, stranger]);
    expect({ ...after.state, events: [] }).toEqual({ ...before.state, events: [] });
    expect(after.step).toEqual(before.step);
  });
});
