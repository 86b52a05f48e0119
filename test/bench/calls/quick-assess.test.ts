import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/call/assess.js';
import { RECORD_FORMAT } from '../../../src/call/events.js';
import { diceOf } from '../../../src/call/rehearsal/dice.js';
import { inventCaller } from '../../../src/call/rehearsal/invent-caller.js';
import { playScript } from '../../../src/call/scripted-call.js';
import { freshState } from '../../../src/call/state.js';
import { VERSION } from '../../../src/call/version.js';
import { modelOf } from '../../../src/ranking/model.js';
import { happen, see } from './happen.js';
import { quickAssess } from './quick-assess.js';
import { digest, rules } from './rule-base.js';

const model = modelOf(rules);
const callers = { truth: model, wrong: 0.1, cantTell: 0.1 };

describe('the quick assessment', () => {
  it('is the one of the call, after each step of calls with doubtful answers and after all answers at once', async () => {
    let compared = 0;
    for (const [at, { id }] of rules.causes.filter((_, index) => index % 16 === 0).entries()) {
      const script = inventCaller(rules, id, callers, diceOf(at));
      const { call } = await playScript(rules, digest, script, 'quick', {
        before: ({ state, assessed }) => {
          expect(quickAssess(rules, model, state)).toEqual(assessed);
          compared++;
        },
      });
      const answers = new Map(
        [...call.state.history].map((answer) => [answer.question, answer] as const).slice(compared % 5),
      );
      const state = { ...call.state, answers };
      expect(quickAssess(rules, model, state)).toEqual(await assess(rules, model, state));
    }
    expect(compared).toBeGreaterThan(100);
  });

  it('is the one of the call where a check is spoilt, and what builds on it', async () => {
    const header = {
      ...{ record: RECORD_FORMAT, id: 'spoilt', opened: '2026-11-25T09:00:00.000Z', whydark: VERSION },
      ...{ rules: { version: rules.manifest.version, digest }, role: 'desk' as const },
    };
    let state = freshState(header);
    const told = {
      'site-web': 'opens',
      'mobile-data-off': false,
      'router-page': false,
      'camera-ping': false,
      'camera-page': 'nothing',
    };
    const empty = see(rules, model, state);
    for (const [question, answer] of Object.entries(told))
      state = happen(rules, { ...empty, state }, { type: 'answered', question, answer, origin: 'said' });
    const quick = quickAssess(rules, model, state);
    expect(quick.settled.testerFaults).toEqual(['mobile-data-still-on', 'router-page-first']);
    expect(quick.settled.findings.has('ping-reply')).toBe(false);
    expect(quick).toEqual(await assess(rules, model, state));
  });
});
