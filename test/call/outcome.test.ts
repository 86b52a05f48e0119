import { describe, expect, it } from 'vitest';
import type { CallEvent } from '../../src/call/events.js';
import {
  changeable,
  holdsMore,
  type Outcome,
  outcomeOf,
  type Said,
  stillDark,
} from '../../src/call/outcome.js';
import { played, said, tried } from './play.js';

const HERE = said('at-site', 'here');
const LIT = said('lights', 'on');
const DARK = said('lights', 'off');
const NUMBERS = [
  HERE,
  LIT,
  said('camera-address', '172.23.40.57'),
  said('camera-mask', '255.255.255.0'),
  said('camera-gateway', '172.23.41.1'),
];
const TRY = [HERE, DARK, said('socket', 'dead'), said('loose', false)];
const one = (id: string): Said => ({ kind: 'one', id });

/** A step, what is said at it, and what follows. */
const FOLLOWS: readonly (readonly [string, readonly CallEvent[], Said, Outcome | object])[] = [
  ['an answer is said', [], one('here'), event({ type: 'answered', question: 'at-site', answer: 'here' })],
  ['agreed', NUMBERS, one('agrees'), event({ type: 'agreed', question: 'camera-address' })],
  ['reads otherwise', NUMBERS, one('differs'), { kind: 'change', question: 'camera-address' }],
  [
    'nobody can look',
    NUMBERS,
    one('leave'),
    event({ type: 'kept', contradiction: 'read-back:camera-address' }),
  ],
  [
    'one of two is changed',
    [HERE, said('other-phone', true), DARK],
    one('change:other-phone'),
    { kind: 'change', question: 'other-phone' },
  ],
  [
    'both stay',
    [HERE, said('other-phone', true), DARK],
    one('keep'),
    event({ type: 'kept', contradiction: 'dark-yet-open' }),
  ],
  [
    'a check is put right',
    [HERE, DARK, said('socket', 'dead'), said('loose', true)],
    one('put-right'),
    event({ type: 'tester-dealt', fault: 'plug-loose', outcome: 'put-right' }),
  ],
  [
    'a check is left',
    [HERE, DARK, said('socket', 'dead'), said('loose', true)],
    one('left'),
    event({ type: 'tester-dealt', fault: 'plug-loose', outcome: 'left' }),
  ],
  ['back', TRY, one('back'), event({ type: 'tried', remedy: 'plug-in', took: 'yes', picture: 'yes' })],
  ['still dark: its check comes first', TRY, one('dark'), { kind: 'check', remedy: 'plug-in' }],
  ['not now', TRY, one('not-now'), event({ type: 'passed-over', step: 'try:plug-in' })],
  [
    'the end with a picture',
    [HERE, DARK, tried('plug-in', 'yes', 'yes')],
    one('close'),
    event({ type: 'closed', how: 'picture-back' }),
  ],
  [
    'the end without a right to ask',
    [said('at-site', 'stranger')],
    one('close'),
    event({ type: 'closed', how: 'out-of-scope' }),
  ],
];

function event(happening: object): object {
  return { kind: 'event', event: expect.objectContaining(happening) };
}

describe('what follows from a reply', () => {
  it.each(FOLLOWS)('%s', async (_, before, reply, wanted) => {
    expect(outcomeOf(await played(before), reply)).toEqual(wanted);
  });

  it.each([
    ['yes', 'yes'],
    ['no', 'no'],
    ['cant-tell', 'cant-tell'],
    ['', 'cant-tell'],
  ])('a remedy that took "%s" and left it dark is kept as %s', (took, kept) => {
    expect(stillDark('plug-in', took)).toMatchObject({ took: kept, picture: 'no' });
  });
});

describe('the answers that can be changed', () => {
  it('stand with the last given first, each once and as it is now', async () => {
    const call = await played([HERE, DARK, LIT, said('kit', ['ladder'])]);
    expect(changeable(call).map(({ id, answer }) => `${id}: ${answer}`)).toEqual([
      'kit: it is ladder',
      'lights: it is on',
      'at-site: on the site',
    ]);
  });

  it('lack those that a remedy made stale', async () => {
    const call = await played([HERE, DARK, tried('jiggle', 'yes')]);
    expect(changeable(call).map(({ id }) => id)).toEqual(['at-site']);
  });
});

describe('a typed line', () => {
  const TWO = '172.23.40.22 255.255.255.0';

  it('holds more than was asked for where it has two addresses', async () => {
    const call = await played([HERE, LIT, said('camera-address', '172.23.40.57')]);
    const asks = { ...call, step: { ...call.step, kind: 'ask' as const, question: 'camera-mask' } };
    expect(holdsMore(asks as typeof call, TWO)).toBe(true);
    expect(holdsMore(asks as typeof call, '255.255.255.0')).toBe(false);
  });

  it('does not where no address was asked for', async () => {
    expect(holdsMore(await played([]), TWO)).toBe(false);
  });
});
