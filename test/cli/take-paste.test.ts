import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/call/call.js';
import { openCall } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import type { OfPaste } from '../../src/call/from-paste.js';
import { takePaste } from '../../src/cli/take-paste.js';
import { AT, DIGEST, headerFor, played, said } from '../call/play.js';
import { READING } from '../call/reading-base.js';
import { lineWith, SITE } from '../intake/a-site.js';
import { type Answerer, asking, command, one, type Put } from './desk.js';

const PAGE = 'Camera\nIP address: 172.23.40.57\nSubnet mask: 255.255.255.0\nDefault gateway: 172.23.41.1\n';
const LINUX = (name: string, address: string): string =>
  `2: ${name}: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 qdisc noqueue state UP group default qlen 1000
    link/ether 02:00:5e:10:00:05 brd ff:ff:ff:ff:ff:ff
    inet ${address} scope global ${name}
       valid_lft forever preferred_lft forever
`;
const TWO = LINUX('eth0', '172.23.40.5/24') + LINUX('eth1', '10.77.5.9/24');

interface Took {
  readonly events: readonly OfPaste[];
  readonly told: string;
  readonly put: readonly Put[];
  readonly left: number;
}

async function took(text: string, answers: readonly Answerer[], call?: Call): Promise<Took> {
  const { ask, put, left } = asking(answers);
  const told: string[] = [];
  const desk = { ask, tell: (words: string) => void told.push(words), columns: 80 };
  const event = await takePaste(desk, call ?? (await fresh()), text);
  const events = event === undefined ? [] : [event];
  return { events, told: told.join('\n'), put, left: left() };
}

const fresh = (): Promise<Call> => openCall(READING, DIGEST, headerFor('desk', READING));
const idsOf = ({ input }: Put): readonly string[] =>
  input.kind === 'choice' ? input.choices.map(({ id }) => id) : [];
const titlesOf = ({ input }: Put): readonly string[] =>
  input.kind === 'choice' ? input.choices.map(({ title }) => title) : [];
const answersOf = ({ events }: Took): Readonly<Record<string, unknown>> => {
  const [event] = events;
  const answers = event?.type === 'pasted' ? event.answers : [];
  return Object.fromEntries(answers.map(({ question, answer }) => [question, answer]));
};

describe('a text with a computer in it', () => {
  it('is said as understood, asked about once, and fills the answers in', async () => {
    const done = await took(SITE, [one('yes')]);
    expect(done.told.indexOf('Read from the text')).toBe(0);
    expect(done.told).toContain('Is that computer at the place of the camera?');
    expect(done.told).toContain(`Title of camera-address: 172.23.40.57 (line ${lineWith('IP address:')})`);
    expect(done.put.map(idsOf)).toEqual([['yes', 'no', 'none']]);
    expect(done.events).toMatchObject([{ type: 'pasted', paste: 'p1', origin: 'pasted' }]);
    expect(done.events[0]?.note).toContain('not from its gateway');
    expect(answersOf(done)).toEqual({
      loose: true,
      'camera-address': '172.23.40.57',
      'camera-mask': '255.255.255.0',
      'camera-gateway': '172.23.41.1',
    });
  });

  it('is used for nothing before somebody has seen what was understood', async () => {
    const told: string[] = [];
    const seen: string[] = [];
    const { ask } = asking([
      () => {
        seen.push(...told);
        return one('none');
      },
    ]);
    const desk = { ask, tell: (words: string) => void told.push(words), columns: 80 };
    expect(await takePaste(desk, await fresh(), SITE)).toBeUndefined();
    expect(seen.join('\n')).toContain('Read from the text');
    expect(told.join('\n')).not.toContain('Filled in');
  });

  it('that is elsewhere gives what its devices say, and not what it sent', async () => {
    const done = await took(SITE, [one('no')]);
    expect(answersOf(done)).toEqual({
      'camera-address': '172.23.40.57',
      'camera-mask': '255.255.255.0',
      'camera-gateway': '172.23.41.1',
    });
    expect(done.events[0]?.note).toBeUndefined();
  });

  it.each<[string, Answerer]>([
    ['the choice says so', one('none')],
    ['a command comes instead of a choice', command('back')],
  ])('is left out altogether where %s', async (_, answer) => {
    expect((await took(SITE, [answer])).events).toEqual([]);
  });

  it('keeps no secret in what is told or kept', async () => {
    const done = await took(SITE, [one('yes')]);
    for (const secret of ['Rosa', 'QUAY-PC-7', 'herring', 'boathouse'])
      expect(JSON.stringify([done.told, done.events])).not.toContain(secret);
  });
});

describe('a computer with several adapters', () => {
  const base = {
    ...READING,
    questions: READING.questions.map((question) =>
      question.id === 'camera-gateway' ? { ...question, reads: 'computer.address' as const } : question,
    ),
  };
  const call = (): Promise<Call> => openCall(base, DIGEST, headerFor('desk', base));

  it('offers another one than the one that was found', async () => {
    const done = await took(TWO, [one('other'), one('1')], await call());
    expect(done.put.map(idsOf)).toEqual([
      ['yes', 'other', 'no', 'none'],
      ['0', '1'],
    ]);
    expect(done.put[1] && titlesOf(done.put[1])).toEqual(['"eth0"', '"eth1"']);
    expect(answersOf(done)).toEqual({ 'camera-gateway': '10.77.5.9' });
    expect(answersOf(await took(TWO, [one('other'), one('0')], await call()))).toEqual({
      'camera-gateway': '172.23.40.5',
    });
  });

  it('is left out where nobody says which', async () => {
    expect((await took(TWO, [one('other'), command('back')], await call())).events).toEqual([]);
  });

  it('takes the one in whose range the camera of the call lies', async () => {
    const state = (await played([said('camera-address', '10.77.5.57')])).state;
    const known = { ...(await call()), state };
    const done = await took(TWO, [one('yes')], known);
    expect(answersOf(done)).toMatchObject({ 'camera-gateway': '10.77.5.9' });
    expect(done.told).toContain('Towards the camera: "eth1". The camera lies in its range.');
  });
});

describe('the page of a device', () => {
  it('is taken without the question whose place it comes from', async () => {
    const done = await took(PAGE, [one('take')]);
    expect(done.put.map(idsOf)).toEqual([['take', 'none']]);
    expect(done.told).toContain('Take these values for this call?');
    expect(answersOf(done)).toMatchObject({ 'camera-address': '172.23.40.57' });
    expect((await took(PAGE, [one('none')])).events).toEqual([]);
  });

  it('beside a ping is asked about: the ping was sent from somewhere', async () => {
    const ping = SITE.slice(SITE.indexOf('Pinging'), SITE.indexOf('Camera'));
    const done = await took(`${ping}\n${PAGE}`, [one('no')]);
    expect(done.put.map(idsOf)).toEqual([['yes', 'no', 'none']]);
    expect(answersOf(done)).not.toHaveProperty('loose');
    expect(answersOf(await took(`${ping}\n${PAGE}`, [one('yes')]))).toMatchObject({ loose: true });
  });
});

describe('numbers that the text gives to nobody', () => {
  const BARE = '172.23.40.57\n255.255.255.0\n172.23.40.1\n';

  it('are asked about before anything is taken', async () => {
    const done = await took(BARE, [one('camera'), one('take')]);
    expect(done.told).toContain('Whose numbers are these: 172.23.40.57, mask 255.255.255.0');
    expect(answersOf(done)).toMatchObject({
      'camera-address': '172.23.40.57',
      'camera-mask': '255.255.255.0',
    });
  });

  it('are nobody’s where nobody knows', async () => {
    expect(answersOf(await took(BARE, [one('unknown'), one('take')]))).toEqual({});
    expect(answersOf(await took(BARE, [one('router'), one('take')]))).toEqual({});
  });

  it('are those of what is asked about first', async () => {
    const now = await fresh();
    const asked: Call = {
      ...now,
      step: { ...now.step, kind: 'ask', question: 'camera-mask' } as Call['step'],
    };
    const { put } = await took(BARE, [one('camera'), one('take')], asked);
    expect(put[0] && idsOf(put[0])).toEqual(['camera', 'phone', 'computer', 'router', 'unknown']);
    const phone = {
      ...asked,
      rules: {
        ...READING,
        questions: READING.questions.map((question) =>
          question.id === 'camera-mask' ? { ...question, reads: 'phone.same-range' as const } : question,
        ),
      },
    };
    const second = await took(BARE, [one('phone'), one('take')], phone);
    expect(second.put[0] && idsOf(second.put[0])[0]).toBe('phone');
  });
});

describe('a text that says nothing', () => {
  it('is kept where somebody wants it, without an answer', async () => {
    const done = await took('what a day\n', [one('take')]);
    expect(done.told).toContain('Nothing in this text was understood.');
    expect(done.told).toContain('The text answers no question of this call.');
    expect(done.events).toEqual([
      { type: 'pasted', paste: 'p1', origin: 'pasted', text: 'what a day\n', answers: [] },
    ]);
  });
});

it('a second text is the second of the call', async () => {
  const first: CallEvent = { at: AT, type: 'pasted', paste: 'p1', origin: 'pasted', text: '', answers: [] };
  const now = await fresh();
  const call = { ...now, state: { ...now.state, events: [first] } };
  expect((await took(PAGE, [one('take')], call)).events[0]).toMatchObject({ paste: 'p2' });
});

it('lines fit the terminal, and what is broken off hangs', async () => {
  const { told } = await took(SITE, [one('yes')]);
  expect(Math.max(...told.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  expect(told).toMatch(/\n {2}Computer "Ethernet": network lead, .*\n {4}\S/);
});
