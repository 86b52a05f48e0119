import { describe, expect, it } from 'vitest';
import type { CallEvent } from '../../src/call/events.js';
import { checkOf, type Input, questionScreen, type Screen, screenOf } from '../../src/call/screen.js';
import { agreed, kept, passedOver, played, said, tried } from './play.js';

const HERE = said('at-site', 'here');
const DARK = said('lights', 'off');
const LIT = said('lights', 'on');
const NUMBERS = [
  HERE,
  LIT,
  said('camera-address', '172.23.40.57'),
  said('camera-mask', '255.255.255.0'),
  said('camera-gateway', '172.23.41.1'),
];

const shown = async (events: readonly CallEvent[], role: 'desk' | 'site' = 'desk'): Promise<Screen> =>
  screenOf(await played(events, role));
const ids = (input: Input): readonly string[] =>
  'choices' in input ? input.choices.map(({ id }) => id) : [input.kind];

describe('a question', () => {
  it('has its number, the words to say, how to find it, and why it is asked', async () => {
    const screen = await shown([]);
    expect(screen.heading).toBe('Question 1, to begin with');
    expect(screen.say).toEqual(['Say at-site?']);
    expect(screen.help).toEqual(['How to find at-site.']);
    expect(screen.why).toEqual(['Asked in every call: it decides which of the later questions make sense.']);
    expect(ids(screen.input)).toEqual(['here', 'gone', 'stranger', 'doorbell']);
    expect(screen.mayPass).toBe(true);
  });

  it('says which two causes it tells apart, and what each answer does to them', async () => {
    const call = await played([HERE, DARK, tried('jiggle', 'yes')]);
    expect(call.step).toMatchObject({ kind: 'ask', purpose: { kind: 'finding' } });
    const [apart, ...effects] = screenOf(call).why;
    expect(apart).toMatch(/^It tells apart: .* \(now \d+\s%\) and .* \(now \d+\s%\)\.$/);
    expect(effects).toHaveLength(2);
    for (const effect of effects)
      expect(effect).toMatch(/^If "seen (lit|dark)": the first \d+\s%, the second \d+\s%\.$/);
  });

  it('before a remedy says which remedy waits for it, and why', async () => {
    const call = await played([HERE, LIT, said('account', true), agreed('lights'), agreed('account')]);
    expect(call.step).toMatchObject({ kind: 'ask', question: 'owner-agrees', purpose: { kind: 'gate' } });
    expect(screenOf(call).why).toEqual([
      'Asked before "Title of correct-gateway" may be tried.',
      'The owner has to agree.',
    ]);
  });

  it('of a look before a remedy says that it may be something else, not that it may not be tried', async () => {
    const call = await played([HERE, LIT, said('account', true), agreed('lights'), agreed('account')]);
    const askBefore = ['owner-agrees'];
    const ungated = call.rules.remedies.map(({ gate: _, ...one }) => ({ ...one, askBefore }));
    expect(screenOf({ ...call, rules: { ...call.rules, remedies: ungated } }).why).toEqual([
      'A quick look before "Title of correct-gateway" is tried: it may turn out to be something else.',
    ]);
    // Where it opens the gate as well, that is the reason that counts.
    const gated = call.rules.remedies.map((one) => ({ ...one, askBefore }));
    expect(screenOf({ ...call, rules: { ...call.rules, remedies: gated } }).why).toContain(
      'The owner has to agree.',
    );
  });

  it('counts questions, not answers, and not what a record without a person left out', async () => {
    expect((await shown([said('at-site', 'gone'), HERE])).heading).toBe('Question 2, to begin with');
  });
});

describe('how a question is answered', () => {
  it.each<[string, readonly string[]]>([
    ['lights', ['on', 'off']],
    ['account', ['yes', 'no']],
    ['kit', ['patch-lead', 'ladder']],
    ['camera-mask', ['field']],
    ['their-words', ['field']],
    ['volts', ['field']],
  ])('%s', async (id, wanted) => {
    const { input } = questionScreen(await played([HERE]), id);
    expect(ids(input)).toEqual(wanted);
    expect(input.kind).toBe(id === 'kit' ? 'several' : wanted[0] === 'field' ? 'field' : 'choice');
  });

  it('offers the answer it had, in words', async () => {
    const call = await played([
      HERE,
      said('camera-mask', '/24'),
      said('volts', '12 V'),
      said('their-words', null),
    ]);
    expect(questionScreen(call, 'camera-mask').input).toEqual({ kind: 'field', was: '255.255.255.0' });
    expect(questionScreen(call, 'volts').input).toEqual({ kind: 'field', was: '12 V' });
    expect(questionScreen(call, 'their-words').input).toEqual({ kind: 'field' });
  });
});

describe('every other step', () => {
  it('reads a number back, digit by digit, and says what that is for', async () => {
    const screen = await shown(NUMBERS);
    expect(screen.heading).toBe('Read this back');
    expect(screen.say[0]).toContain('Title of camera-address: 172.23.40.57.');
    expect(screen.why[0]).toContain('the sum is proven');
    expect(ids(screen.input)).toEqual(['agrees', 'differs', 'leave']);
    expect(screen.path[0]?.state).toBe('faulty');
  });

  it('goes on without, where nobody can look', async () => {
    expect((await shown([...NUMBERS, kept('read-back:camera-address')])).say[0]).toContain('camera-gateway');
  });

  it('puts two answers that do not go together side by side, the one to check first on top', async () => {
    const screen = await shown([HERE, said('other-phone', true), DARK]);
    expect(screen.say).toEqual(['No light, yet a picture.']);
    expect(ids(screen.input)).toEqual(['change:lights', 'change:other-phone', 'keep']);
    expect('choices' in screen.input && screen.input.choices[0]?.title).toBe(
      'Change "Title of lights" (now: it is off)',
    );
  });

  it('says what to do about a spoilt check', async () => {
    const screen = await shown([HERE, DARK, said('socket', 'dead'), said('loose', true)]);
    expect(screen.heading).toContain('The lamp used to try the socket was loose');
    expect(screen.say).toEqual(['Try the lamp at another socket.']);
    expect(ids(screen.input)).toEqual(['put-right', 'left']);
  });

  it('says a remedy word for word, where it is done, how long it takes, and what it would mend', async () => {
    const screen = await shown([HERE, DARK, said('socket', 'dead'), said('loose', false)]);
    expect(screen.heading).toBe('Try this: Title of plug-in (at cabinet, about 3 min)');
    expect(screen.say).toEqual(['Do plug-in.']);
    expect(screen.why).toEqual([
      expect.stringMatching(/^It would mend: Title of supply-off \(now \d+\s%\)\.$/),
    ]);
    expect(ids(screen.input)).toEqual(['back', 'dark', 'not-now']);
    expect(screen.mayPass).toBe(false);
  });

  it('puts cautions before anything that can hurt', async () => {
    const call = await played([
      ...[HERE, LIT, said('account', true), agreed('lights'), agreed('account')],
      said('owner-agrees', true),
    ]);
    expect(call.step).toMatchObject({ kind: 'try', remedy: 'correct-gateway' });
    expect(screenOf(call).cautions).toEqual(['Leave mains to an electrician.']);
  });

  it('asks whether a remedy took, besides the picture', async () => {
    const check = checkOf(await played([HERE]), 'plug-in');
    expect(check.say).toEqual(['Did plug-in take?']);
    expect(ids(check.input)).toEqual(['yes', 'no', 'cant-tell']);
  });

  const nothingLeft = [
    HERE,
    DARK,
    said('socket', 'live'),
    said('account', true),
    ...['jiggle', 'plug-in', 'sign-in-again', 'watch', 'correct-gateway'].map((id) =>
      passedOver(`try:${id}`),
    ),
  ];

  it.each([
    ['desk', 'by phone only at more trouble than a visit'],
    ['site', 'Come back with the things below'],
  ] as const)('sends someone, with labour and waiting as two figures (%s)', async (role, words) => {
    const asked = ['account', 'other-phone', 'kit', 'owner-agrees', 'volts', 'camera-address'].map((id) =>
      passedOver(`ask:${id}`),
    );
    const screen = await shown([...nothingLeft, ...asked], role);
    expect(screen.heading).toBe('Someone has to go there');
    expect(screen.say[0]).toContain(words);
    expect(screen.say[0]).toContain('Labour about 120 min, waiting about 1.5 days.');
    expect(screen.help).toEqual(
      expect.arrayContaining([
        'To do there: Title of swap-lead',
        'To bring: A good patch lead',
        'To bring: a lead of ten metres',
      ]),
    );
    expect(ids(screen.input)).toEqual(['close']);
  });

  it.each<[string, readonly CallEvent[], string]>([
    [
      'the picture is back',
      [HERE, DARK, tried('plug-in', 'yes', 'yes')],
      'That mends one thing only: Title of supply-off.',
    ],
    ['the caller may not ask', [said('at-site', 'stranger')], 'the caller may not ask for this camera'],
    [
      'the camera is of another kind',
      [said('at-site', 'doorbell')],
      'of a kind that this guide does not cover',
    ],
  ])('ends where %s', async (_, events, words) => {
    const screen = await shown(events);
    expect(screen.heading).toBe('The end of this call');
    expect(screen.say.join(' ')).toContain(words);
    expect(screen.help).toHaveLength(1);
    expect(ids(screen.input)).toEqual(['close']);
  });
});

describe('the picture path above a step', () => {
  it('shows what works, what is suspect and what nobody has looked at', async () => {
    const state = async (events: readonly CallEvent[]): Promise<readonly string[]> =>
      (await shown(events)).path.map((stage) => `${stage.id} ${stage.state}`);
    expect(await state([HERE, DARK])).toEqual(['power suspect', 'sign-in unseen']);
    expect(await state([HERE, LIT, said('account', false)])).toEqual(['power good', 'sign-in suspect']);
  });
});
