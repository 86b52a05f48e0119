import { describe, expect, it } from 'vitest';
import { diagnosisOf, replay } from '../../src/call/call.js';
import { DIGEST, headerFor, played, probabilityOf, refusal, said, tried } from './play.js';
import { TINY } from './tiny-rule-base.js';

const DARK = [said('at-site', 'here'), said('lights', 'off'), said('socket', 'dead')];
const WORDS = { seldom: 0.1, half: 0.5 };

describe('two faults, found one after the other', () => {
  const first = [...DARK, said('account', false)];

  it('begins with the likelier one, once the check behind it is known to count', async () => {
    expect((await played(first)).step).toMatchObject({
      ...{ kind: 'ask', question: 'loose', purpose: { kind: 'soundness', fault: 'plug-loose' } },
    });
    const sound = await played([...first, said('loose', false)]);
    expect(sound.step).toMatchObject({ kind: 'try', remedy: 'plug-in' });
  });

  it('strikes what was mended, drops what that changed, and finds the second in the rest', async () => {
    const call = await played([...first, tried('plug-in', 'yes')]);
    expect(call.state.epoch).toBe(2);
    expect(probabilityOf(call, 'supply-off')).toBe(0);
    expect([...call.state.answers.keys()]).toEqual(['at-site', 'account']);
    expect(call.step).toMatchObject({ kind: 'try', remedy: 'sign-in-again' });
    expect(diagnosisOf(call).verdict).toMatchObject({ kind: 'named', cause: 'password-changed' });
  });

  it('takes a stale answer anew', async () => {
    const call = await played([...first, tried('plug-in', 'yes'), said('lights', 'on')]);
    expect(call.assessed.settled.findings.get('life')?.value).toBe('lit');
    const asked = await played([...first, tried('plug-in', 'yes')]);
    expect(probabilityOf(call, 'password-changed')).toBeGreaterThan(probabilityOf(asked, 'password-changed'));
  });

  it('ends when the second is mended too', async () => {
    const call = await played([
      ...first,
      tried('plug-in', 'yes'),
      said('lights', 'on'),
      tried('sign-in-again', 'yes', 'yes'),
    ]);
    expect(call.step).toEqual({ kind: 'end', how: 'picture-back' });
    expect(diagnosisOf(call).verdict).toMatchObject({
      kind: 'restored',
      cause: 'password-changed',
      remedy: 'sign-in-again',
      confirmed: true,
    });
  });
});

describe('findings spent on a cause that is mended', () => {
  const low = [...DARK, said('volts', 12)];

  it('say nothing in the next epoch', async () => {
    const call = await played([...low, tried('plug-in', 'yes')]);
    expect([...call.state.spent]).toEqual(['volts-state']);
    expect(call.assessed.evidence.map(({ finding }) => finding)).not.toContain('volts-state');
  });

  it('speak again once what they rest on is said anew', async () => {
    const call = await played([...low, tried('plug-in', 'yes'), said('volts', 48)]);
    expect(call.assessed.evidence).toContainEqual(
      expect.objectContaining({ finding: 'volts-state', value: 'right' }),
    );
  });
});

describe('answers that a remedy makes stale', () => {
  it('go even where the finding they belong to was not known yet', async () => {
    const half = [
      said('at-site', 'here'),
      said('lights', 'on'),
      said('camera-address', '172.23.40.57'),
      said('owner-agrees', true),
    ];
    const call = await played([...half, tried('correct-gateway', 'yes')]);
    expect(call.state.answers.has('camera-address')).toBe(false);
    expect(call.state.answers.has('owner-agrees')).toBe(true);
  });

  it('leave a "can\'t tell" standing, so that it is not put twice', async () => {
    const call = await played([said('at-site', 'here'), said('lights', null), tried('plug-in', 'yes')]);
    expect(call.state.answers.get('lights')?.value).toEqual({ kind: 'cant-tell' });
  });
});

describe('a remedy that did not take', () => {
  it.each(['no', 'cant-tell'] as const)(
    'leaves what it mends at 1 - m of its weight (took: %s)',
    async (took) => {
      const before = await played(DARK);
      const after = await played([...DARK, tried('jiggle', took)]);
      // Bayes: weights before, times 1 - m, made to sum to 1 again.
      const left = (cause: string, m: number): number => probabilityOf(before, cause) * (1 - m);
      const mended = left('lead-broken', WORDS.half) + left('supply-off', WORDS.seldom);
      const others = 1 - probabilityOf(before, 'lead-broken') - probabilityOf(before, 'supply-off');
      expect(probabilityOf(after, 'supply-off')).toBeCloseTo(
        left('supply-off', WORDS.seldom) / (mended + others),
        12,
      );
      expect(probabilityOf(after, 'lead-broken')).toBeCloseTo(
        left('lead-broken', WORDS.half) / (mended + others),
        12,
      );
      expect(after.state.epoch).toBe(1);
      expect(after.state.answers).toEqual(before.state.answers);
    },
  );
});

describe('the picture is back', () => {
  it('after a remedy that mends one thing: that is the cause', async () => {
    const { verdict, watch } = diagnosisOf(await played([...DARK, tried('plug-in', 'yes', 'yes')]));
    expect(verdict).toMatchObject({ kind: 'restored', cause: 'supply-off', confirmed: true, probability: 1 });
    expect(watch).toBeUndefined();
  });

  it('after a remedy that mends two: the likelier one, not confirmed, and watched', async () => {
    const before = await played(DARK);
    const { verdict, ranked, watch } = diagnosisOf(await played([...DARK, tried('jiggle', 'yes', 'yes')]));
    expect(verdict).toMatchObject({ kind: 'restored', cause: 'supply-off', confirmed: false });
    const supply = probabilityOf(before, 'supply-off') * WORDS.seldom;
    const lead = probabilityOf(before, 'lead-broken') * WORDS.half;
    expect(ranked.map(({ id, probability }) => [id, probability])).toEqual([
      ['supply-off', expect.closeTo(supply / (supply + lead), 5)],
      ['lead-broken', expect.closeTo(lead / (supply + lead), 5)],
    ]);
    expect(watch).toContain('Ring back');
  });

  it('by waiting: nothing is confirmed, and it is watched', async () => {
    const { verdict, watch } = diagnosisOf(
      await played([said('at-site', 'here'), said('lights', 'on'), tried('watch', 'yes', 'yes')]),
    );
    expect(verdict).toMatchObject({ kind: 'nothing' });
    expect(watch).toContain('Ring back');
  });
});

describe('a remedy that was tried', () => {
  it('stays away while what it looks at is only asked anew, or reads the same', async () => {
    const jiggled = [...DARK.slice(0, 2), tried('jiggle', 'yes')];
    expect((await played(jiggled)).situation.tried).toContain('jiggle');
    expect((await played([...jiggled, said('lights', 'off')])).situation.tried).toContain('jiggle');
  });

  it('may come back when a finding it looks at has changed', async () => {
    const call = await played([...DARK.slice(0, 2), tried('jiggle', 'no'), said('lights', 'on')]);
    expect(call.situation.tried).not.toContain('jiggle');
  });

  it('stays away for the call when it looks at nothing', async () => {
    const call = await played([
      ...DARK,
      tried('plug-in', 'no'),
      said('lights', 'on'),
      said('socket', 'live'),
    ]);
    expect(call.situation.tried).toContain('plug-in');
  });

  it('of another rule base comes back as a sentence', async () => {
    expect(await refusal(DARK, tried('pray', 'yes'))).toContain('no remedy "pray"');
  });
});

describe('what is at hand', () => {
  it('keeps a remedy away until the kit for it is there', async () => {
    const live = [said('at-site', 'here'), said('lights', 'off'), said('socket', 'live')];
    const titles = async (kit: readonly string[]): Promise<readonly (string | undefined)[]> =>
      diagnosisOf(await played([...live, said('kit', kit)])).plan.map(({ remedy }) => remedy);
    expect(await titles(['patch-lead'])).toContain('swap-lead');
    expect(await titles(['ladder'])).not.toContain('swap-lead');
  });

  it('is only what the hands on the call may do', async () => {
    const rules = {
      ...TINY,
      remedies: TINY.remedies.map((one) =>
        one.id === 'plug-in' ? { ...one, who: 'installer' as const } : one,
      ),
    };
    const planned = async (role: 'desk' | 'site'): Promise<readonly (string | undefined)[]> => {
      const result = await replay(rules, DIGEST, headerFor(role), DARK);
      return result.ok ? diagnosisOf(result.value).plan.map(({ remedy }) => remedy) : [];
    };
    expect(await planned('site')).toContain('plug-in');
    expect(await planned('desk')).not.toContain('plug-in');
  });
});
