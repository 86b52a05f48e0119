import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { RawAnswer } from '../../src/answers/answer.js';
import { advance, type Call, diagnosisOf, openCall, replay } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import { screenOf } from '../../src/call/screen.js';
import { AT, DIGEST, headerFor, played, replayed, said, tried, undone } from './play.js';
import { TINY } from './tiny-rule-base.js';

const ids = (records: readonly { readonly id: string }[]): fc.Arbitrary<string> =>
  fc.constantFrom(...records.map(({ id }) => id));
const text = fc.string({ unit: 'binary', maxLength: 8 });
const FITTING: Readonly<Record<string, readonly RawAnswer[]>> = {
  account: [true, false],
  'at-site': ['here', 'here', 'gone', 'stranger'],
  'camera-address': ['172.23.40.57'],
  'camera-gateway': ['172.23.40.1', '172.23.41.1'],
  'camera-mask': ['255.255.255.0'],
  kit: [['patch-lead'], ['ladder'], []],
  lights: ['on', 'off', 'off'],
  loose: [true, false],
  'other-phone': [true, true, false],
  'owner-agrees': [true, false],
  socket: ['live', 'dead', 'dead'],
  'their-words': ['all black'],
  volts: ['12 V', '48 V'],
};
/** Mostly an answer that fits, at times "can't tell", now and then anything. */
const answered = ids(TINY.questions).chain((question) =>
  fc.record({
    at: fc.constant(AT),
    type: fc.constant('answered' as const),
    question: fc.constant(question),
    answer: fc.oneof(
      { weight: 8, arbitrary: fc.constantFrom(...(FITTING[question] ?? [])) },
      { weight: 1, arbitrary: fc.constant(null) },
      { weight: 1, arbitrary: text },
    ),
    origin: fc.constantFrom('said' as const, 'said' as const, 'pasted' as const),
  }),
);
const yesNoUnsure = fc.constantFrom('yes' as const, 'no' as const, 'cant-tell' as const);
const at = fc.constant(AT);

/** What can stand in a record, fitting or not. */
const event: fc.Arbitrary<CallEvent> = fc.oneof(
  { weight: 14, arbitrary: answered },
  {
    weight: 4,
    arbitrary: fc.record({
      at,
      type: fc.constant('tried' as const),
      remedy: ids(TINY.remedies),
      took: yesNoUnsure,
      picture: fc.constantFrom('no' as const, 'no' as const, 'yes' as const),
    }),
  },
  { weight: 4, arbitrary: fc.constant(undone) },
  {
    weight: 2,
    arbitrary: fc.record({ at, type: fc.constant('agreed' as const), question: ids(TINY.questions) }),
  },
  { weight: 2, arbitrary: fc.constant<CallEvent>({ at: AT, type: 'kept', contradiction: 'dark-yet-open' }) },
  {
    weight: 2,
    arbitrary: fc.record({
      at,
      type: fc.constant('tester-dealt' as const),
      fault: fc.constant('plug-loose'),
      outcome: fc.constantFrom('put-right' as const, 'left' as const),
    }),
  },
  fc.record({ at, type: fc.constant('noted' as const), text }),
  fc.record({
    at,
    type: fc.constant('passed-over' as const),
    step: ids(TINY.remedies).map((id) => `try:${id}`),
  }),
  fc.record({ at, type: fc.constant('moved' as const), place: fc.constantFrom('cabinet', 'away', 'moon') }),
  fc.constant({ at: AT, type: 'sang' } as unknown as CallEvent),
  fc.constant<CallEvent>({ at: AT, type: 'closed', how: 'stopped' }),
);

const bytes = (call: Call): string =>
  JSON.stringify([diagnosisOf(call), call.step, screenOf(call), call.state.here]);

describe('a call played event by event, and played again from its record', () => {
  it('is the same call after every prefix, to the byte', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(event, { minLength: 6, maxLength: 22 }), async (events) => {
        let call = await openCall(TINY, DIGEST, headerFor());
        const record: CallEvent[] = [];
        for (const one of events) {
          const next = await advance(call, one);
          // What does not fit is never written down.
          if (!next.ok) continue;
          record.push(one);
          call = next.value;
          const again = await replay(TINY, DIGEST, headerFor(), record);
          expect(again.ok && bytes(again.value)).toBe(bytes(call));
          expect(again.ok && again.value.state).toEqual(call.state);
        }
      }),
      { numRuns: 60, seed: 20261125 },
    );
  });

  it('never shows a remedy whose gate is not open, or an answer that was not given', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(event, { minLength: 6, maxLength: 22 }), async (events) => {
        let call = await openCall(TINY, DIGEST, headerFor());
        for (const one of events) {
          const next = await advance(call, one);
          if (next.ok) call = next.value;
          const { step, state } = call;
          if (step.kind === 'try' && step.remedy === 'correct-gateway')
            expect(state.answers.get('owner-agrees')?.value).toEqual({ kind: 'yes-no', yes: true });
          if (step.kind === 'try' && step.remedy === 'swap-lead')
            expect(call.situation.kit).toContain('patch-lead');
          if (step.kind === 'read-back') expect(state.answers.has(step.question)).toBe(true);
        }
      }),
      { numRuns: 60, seed: 20261126 },
    );
  });
});

describe('playing a record again', () => {
  it('comes back with the sentence of the event that does not fit', async () => {
    const result = await replay(TINY, DIGEST, headerFor(), [said('at-site', 'here'), said('toaster', true)]);
    expect(result).toMatchObject({ ok: false, problem: { id: 'call.unknown-question' } });
  });

  it('leaves out what was taken back', async () => {
    const call = await replayed([
      said('at-site', 'gone'),
      undone,
      said('at-site', 'here'),
      tried('plug-in', 'no'),
    ]);
    expect(call.state.events).toHaveLength(2);
    expect(call.state.history.map(({ value }) => value)).toEqual([{ kind: 'choice', id: 'here' }]);
  });

  it('ignores a taking back with nothing before it', async () => {
    expect((await replayed([undone, said('at-site', 'here')])).state).toEqual(
      (await played([said('at-site', 'here')])).state,
    );
  });

  it('skips the opening where nobody is asked, and then asks only what pays', async () => {
    const skipped = await replay(TINY, DIGEST, headerFor(), [said('lights', 'off')], { opening: 'skipped' });
    expect(skipped.ok && skipped.value.step).toMatchObject({ kind: 'try' });
    expect((await replayed([said('lights', 'off')])).step).toMatchObject({
      kind: 'ask',
      question: 'at-site',
    });
  });
});
