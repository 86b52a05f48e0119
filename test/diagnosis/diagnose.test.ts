import { describe, expect, it } from 'vitest';
import { diagnosisOf } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import type { Diagnosis } from '../../src/diagnosis/diagnosis.js';
import { AT, passedOver, played, probabilityOf, said, tried } from '../call/play.js';

const HERE = said('at-site', 'here');
const DARK = said('lights', 'off');
const LIT = said('lights', 'on');
const IDS = ['camera-address', 'camera-mask', 'camera-gateway'];
const numbersOf = (gateway: string): readonly CallEvent[] => [
  said('camera-address', '172.23.40.57'),
  said('camera-mask', '255.255.255.0'),
  said('camera-gateway', gateway),
];
const agreed = IDS.map((question): CallEvent => ({ at: AT, type: 'agreed', question }));
const diagnosed = async (events: readonly CallEvent[]): Promise<Diagnosis> =>
  diagnosisOf(await played(events));

describe('a defect that arithmetic shows', () => {
  it('follows from the numbers given, as long as they were only said', async () => {
    const { defects } = await diagnosed([HERE, LIT, ...numbersOf('172.23.41.1')]);
    expect(defects).toMatchObject([{ finding: 'gateway-place', grade: 'follows', cause: 'gateway-wrong' }]);
  });

  it('is proven once every number was read back and agreed, or pasted', async () => {
    const { defects } = await diagnosed([HERE, LIT, ...numbersOf('172.23.41.1'), ...agreed]);
    expect(defects[0]?.grade).toBe('proven');
    const two = await diagnosed([HERE, LIT, ...numbersOf('172.23.41.1'), ...agreed.slice(1)]);
    expect(two.defects[0]?.grade).toBe('follows');
    const pasted = numbersOf('172.23.41.1').map(
      (event) => ({ ...event, origin: 'pasted', paste: 'p1' }) as CallEvent,
    );
    expect((await diagnosed([HERE, LIT, ...pasted])).defects[0]?.grade).toBe('proven');
  });

  it('says the numbers, and writes the sum out', async () => {
    const { defects } = await diagnosed([HERE, LIT, ...numbersOf('172.23.41.1')]);
    expect(defects[0]?.says).toBe('The gateway 172.23.41.1 is outside.');
    const sum = defects[0]?.lines.join('\n') ?? '';
    for (const part of ['172.23.40.57', '255.255.255.0', '172.23.40.0', '172.23.41.1'])
      expect(sum).toContain(part);
    expect(sum).not.toMatch(/[{}]/);
  });

  it('is reported whatever the ranking says, and not at all where the sum comes out right', async () => {
    const against = await diagnosed([HERE, DARK, said('socket', 'dead'), ...numbersOf('172.23.41.1')]);
    expect(against.verdict).toMatchObject({ kind: 'named', cause: 'supply-off' });
    expect(against.defects).toHaveLength(1);
    expect((await diagnosed([HERE, LIT, ...numbersOf('172.23.40.1')])).defects).toEqual([]);
  });
});

describe('the ranked causes', () => {
  it('stand likeliest first, with the largest reasons for and against', async () => {
    const { ranked } = await diagnosed([HERE, DARK, said('socket', 'dead'), said('account', false)]);
    const shares = ranked.map(({ probability }) => probability);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    const reasons = ranked[0]?.reasons ?? [];
    expect(reasons.map(({ finding, decibans }) => [finding, Math.sign(decibans)])).toEqual([
      ['life', 1],
      ['socket-state', 1],
      ['account-state', -1],
    ]);
    expect(reasons.map(({ decibans }) => Math.abs(decibans))).toEqual(
      reasons.map(({ decibans }) => Math.abs(decibans)).sort((a, b) => b - a),
    );
    expect(reasons[1]).toMatchObject({ value: 'dead', shows: 'seen dead' });
  });

  it('weigh a finding as 10 log10 of what it does to the odds (Good 1950)', async () => {
    const odds = (p: number): number => p / (1 - p);
    const withIt = await played([HERE, DARK, said('socket', 'dead')]);
    const without = await played([HERE, DARK]);
    const weight =
      10 * Math.log10(odds(probabilityOf(withIt, 'supply-off')) / odds(probabilityOf(without, 'supply-off')));
    const shown = diagnosisOf(withIt).ranked[0]?.reasons.find(({ finding }) => finding === 'socket-state');
    expect(shown?.decibans).toBeCloseTo(weight, 1);
  });

  it('are left out where nothing was looked into', async () => {
    expect((await diagnosed([said('at-site', 'stranger')])).ranked).toEqual([]);
  });
});

describe('the picture path', () => {
  it.each<[string, readonly CallEvent[], readonly string[]]>([
    ['nobody has looked', [], ['suspect', 'suspect']],
    ['the camera is dark', [HERE, DARK], ['suspect', 'unseen']],
    ['a light is on', [HERE, LIT, said('account', false)], ['good', 'suspect']],
    [
      'a sum shows a fault, whatever else was seen',
      [HERE, LIT, ...numbersOf('172.23.41.1')],
      ['faulty', 'suspect'],
    ],
    // One answer proves nothing for good: what speaks for the socket being dead outweighs the light.
    [
      'a light is on, yet all else says power',
      [HERE, LIT, said('socket', 'dead'), said('volts', 12), said('account', true)],
      ['suspect', 'unseen'],
    ],
  ])('where %s', async (_, events, states) => {
    expect((await diagnosed(events)).path.map(({ state }) => state)).toEqual(states);
  });

  it('shares out all the probability but that of nothing being wrong', async () => {
    const call = await played([HERE, DARK]);
    const total = diagnosisOf(call).path.reduce((sum, { probability }) => sum + probability, 0);
    expect(total).toBeCloseTo(1 - probabilityOf(call, 'nothing-is-wrong-now'), 5);
  });
});

describe('what to do next', () => {
  it('says for each step who, where, how long, how, how to know, and how to undo', async () => {
    const { plan } = await diagnosed([HERE, DARK, said('socket', 'dead')]);
    expect(plan[0]).toEqual({
      remedy: 'plug-in',
      title: 'Title of plug-in',
      who: 'anyone',
      where: 'at cabinet',
      minutes: 3,
      how: ['Do plug-in.'],
      cautions: [],
      check: 'Did plug-in take?',
      undo: 'Undo plug-in.',
    });
  });

  it('says what a gate asks for as long as nobody has opened it', async () => {
    const cautions = async (events: readonly CallEvent[]): Promise<readonly string[] | undefined> =>
      (await diagnosed(events)).plan.find(({ remedy }) => remedy === 'correct-gateway')?.cautions;
    const lit = [HERE, LIT, said('account', true)];
    expect(await cautions(lit)).toEqual(['The owner has to agree.', 'Leave mains to an electrician.']);
    expect(await cautions([...lit, said('owner-agrees', true)])).toEqual(['Leave mains to an electrician.']);
    expect(await cautions([...lit, said('owner-agrees', false)])).toBeUndefined();
  });

  it('plans nothing once the call has ended', async () => {
    expect((await diagnosed([HERE, DARK, tried('plug-in', 'yes', 'yes')])).plan).toEqual([]);
  });
});

describe('a visit', () => {
  const sent = [
    HERE,
    DARK,
    said('socket', 'live'),
    said('account', true),
    ...['jiggle', 'plug-in', 'sign-in-again', 'watch', 'correct-gateway'].map((id) =>
      passedOver(`try:${id}`),
    ),
    ...['other-phone', 'kit', 'owner-agrees', 'volts', 'camera-address'].map((id) => passedOver(`ask:${id}`)),
  ];

  it('says what to do there in order, what to bring, and labour and waiting as two figures', async () => {
    const { visit, next } = await diagnosed(sent);
    expect(next).toBe('visit');
    expect(visit).toMatchObject({ minutes: 120, days: 1.5 });
    expect(visit?.doThere).toContain('Title of swap-lead');
    expect(visit?.bring).toEqual(expect.arrayContaining(['A good patch lead', 'a lead of ten metres']));
    expect(new Set(visit?.bring).size).toBe(visit?.bring.length);
  });

  it('is planned only where it comes to that', async () => {
    expect((await diagnosed([HERE, DARK])).visit).toBeUndefined();
  });
});

describe('watching and calling back', () => {
  it.each<[string, readonly CallEvent[], boolean]>([
    ['the picture is back, and the cause is not proven', [HERE, DARK, tried('jiggle', 'yes', 'yes')], true],
    ['the picture is back, and the cause is proven', [HERE, DARK, tried('plug-in', 'yes', 'yes')], false],
    ['the picture is still dark', [HERE, DARK], false],
  ])('where %s', async (_, events, wanted) => {
    expect((await diagnosed(events)).watch !== undefined).toBe(wanted);
  });
});

describe('what was seen', () => {
  it('lists what works, spoilt checks, and answers that do not go together', async () => {
    const lit = await diagnosed([HERE, LIT]);
    expect(lit.works).toEqual([{ finding: 'life', says: 'Title of life: seen lit', clears: ['power'] }]);
    const spoilt = await diagnosed([HERE, DARK, said('socket', 'dead'), said('loose', true)]);
    expect(spoilt.spoilt).toMatchObject([{ fault: 'plug-loose', help: ['Try the lamp at another socket.'] }]);
    const conflict = await diagnosed([HERE, DARK, said('other-phone', true)]);
    expect(conflict.conflicts).toEqual([
      { id: 'dark-yet-open', says: 'No light, yet a picture.', between: ['other-phone', 'lights'] },
    ]);
  });
});
