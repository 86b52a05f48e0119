import { describe, expect, it } from 'vitest';
import { diagnosisOf, replay } from '../../src/call/call.js';
import { type CallEvent, RECORD_FORMAT } from '../../src/call/events.js';
import { screenOf } from '../../src/call/screen.js';
import { ticketOf } from '../../src/call/ticket-of.js';
import { VERSION } from '../../src/call/version.js';
import { checkRuleFolder } from '../../src/files/load-rules.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;
const at = '2026-11-25T09:00:00.000Z';
const said = (question: string, answer: string | boolean): CallEvent => ({
  ...{ at, type: 'answered', origin: 'said', question, answer },
});
const tried = (remedy: string): CallEvent => ({ at, type: 'tried', remedy, took: 'yes', picture: 'yes' });

async function callAfter(events: readonly CallEvent[]) {
  const header = {
    ...{ record: RECORD_FORMAT, id: 't', opened: at, whydark: VERSION, role: 'desk' as const },
    rules: { version: rules.manifest.version, digest },
  };
  const played = await replay(rules, digest, header, events);
  if (!played.ok) throw new Error(played.problem.id);
  return played.value;
}

const RAIN = [said('camera-type', 'wired'), said('when-dark', 'rain')];
const AWAY = [...RAIN, said('exact-screen', 'picture')];
const THERE = [...RAIN, said('exact-screen', 'offline')];

describe('a remedy while the picture is there anyway', () => {
  it('proves nothing: no cause gains or loses by it, and nothing is called restored', async () => {
    const before = await callAfter(AWAY);
    const done = await callAfter([...AWAY, tried('plug-anew')]);
    expect(done.assessed.probabilities).toEqual(before.assessed.probabilities);
    expect(done.step).toEqual({ kind: 'end', how: 'picture-back' });
    const { verdict, watch } = diagnosisOf(done);
    expect(verdict.kind).not.toBe('restored');
    expect(verdict.kind).not.toBe('nothing');
    expect(watch).toContain('write down when it goes');
    expect(ticketOf(done)).toContain('The picture was there before, and it was there afterwards.');
  });

  it('is not asked whether it brought the picture back', async () => {
    const sure = ['camera-type', 'when-dark', 'exact-screen'].map(
      (question): CallEvent => ({ at, type: 'agreed', question }),
    );
    const titles = async (events: readonly CallEvent[]) => {
      const call = await callAfter(events);
      const step = { kind: 'try', remedy: 'plug-anew', plan: [], minutes: 1 } as const;
      const { input } = screenOf({ ...call, step });
      return 'choices' in input ? input.choices.map(({ title }) => title) : [];
    };
    expect(await titles([...AWAY, ...sure])).toContain('Done, and the picture is still there');
    expect(await titles([...THERE, ...sure])).toContain('Done, and the picture is back');
  });

  it('restores where the picture was gone', async () => {
    const done = await callAfter([...THERE, tried('plug-anew')]);
    expect(diagnosisOf(done).verdict.kind).toBe('restored');
    expect(ticketOf(done)).toContain('The picture came back.');
  });

  it('does not make a watch into proof that nothing is wrong', async () => {
    const watched = diagnosisOf(await callAfter([...AWAY, tried('watch-and-call-back')]));
    expect(watched.verdict.kind).not.toBe('nothing');
    const steady = [said('when-dark', 'always'), said('exact-screen', 'picture')];
    expect(diagnosisOf(await callAfter([...steady, tried('watch-and-call-back')])).verdict.kind).toBe(
      'nothing',
    );
  });
});
