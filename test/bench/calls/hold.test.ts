import { describe, expect, it } from 'vitest';
import { diceOf } from '../../../src/call/rehearsal/dice.js';
import { inventCaller } from '../../../src/call/rehearsal/invent-caller.js';
import type { Script } from '../../../src/call/scripted-call.js';
import { modelOf } from '../../../src/ranking/model.js';
import { hold } from './hold.js';
import { knowing } from './knowing.js';
import { opened } from './opened.js';
import { POLICIES } from './policies.js';
import type { Action, NamedPolicy, Policy } from './policy.js';
import { rules } from './rule-base.js';

const model = modelOf(rules);
const invented = inventCaller(rules, 'patch-lead', { truth: model, wrong: 0, cantTell: 0 }, diceOf(4));
const script: Script = {
  ...invented,
  answers: { ...invented.answers, 'at-site': 'at-site', 'camera-type': 'wired' },
  remedies: { ...invented.remedies, 'reseat-lead': { took: 'yes', picture: 'yes' } },
};
const begun = opened(rules, model, script);

/** Does these things in turn. */
function inTurn(...actions: readonly Action[]): NamedPolicy {
  return {
    name: 'in turn',
    policyFor: () => {
      const left = [...actions];
      return () => left.shift() ?? { kind: 'visit' };
    },
  };
}

function askedBy(policy: Policy): readonly Action[] {
  const actions: Action[] = [];
  const watched: NamedPolicy = {
    name: 'watched',
    policyFor: () => (situation, asked) => {
      const action = policy(situation, asked);
      actions.push(action);
      return action;
    },
  };
  hold(rules, model, begun, watched, 'patch-lead');
  return actions;
}

describe('a call held by a policy', () => {
  it('costs the minutes of its steps and ways, worked by hand', () => {
    // From the site to the computer 2, a ping 2; the router page there 1; to the cabinet 4, reseating 2.
    const ask = (question: string): Action => ({ kind: 'ask', question });
    const held = hold(
      rules,
      model,
      begun,
      inTurn(ask('camera-ping'), ask('router-page'), { kind: 'try', remedy: 'reseat-lead' }),
      'patch-lead',
    );
    expect(held.minutes - begun.tally.minutes).toBeCloseTo(2 + 2 + 1 + 4 + 2, 9);
    expect(held).toMatchObject({ questions: 2, remedies: 1, isVisit: false, isFound: true });
    expect(held.trips - begun.tally.trips).toBe(2);
  });

  it('costs labour and waiting when somebody is sent', () => {
    const held = hold(rules, model, begun, inTurn(), 'patch-lead');
    expect(held.minutes - begun.tally.minutes).toBeCloseTo(120 + 1.5 * 60, 9);
    expect(held).toMatchObject({ questions: 0, remedies: 0, isVisit: true });
    expect(held.isFound).toBe(held.leader === 'patch-lead');
  });

  it('asks nothing of the opening again before something was done, whatever the policy', () => {
    for (const { policyFor } of POLICIES) {
      const steps = askedBy(policyFor(script));
      const first = steps.findIndex(({ kind }) => kind === 'try');
      const again = steps
        .slice(0, first < 0 ? steps.length : first)
        .filter((one) => one.kind === 'ask' && begun.state.askedBefore.has(one.question));
      expect(again).toEqual([]);
    }
  });
});

describe('the policies', () => {
  it('of people restarts the camera before any question of the list', () => {
    const tried = askedBy(POLICIES.find(({ name }) => name === 'what people do')?.policyFor(script) ?? fail);
    const first = tried.find(({ kind }) => kind === 'try');
    expect(first).toEqual({ kind: 'try', remedy: 'restart-camera' });
  });

  it('that knows takes the cheapest cure, and a visit where there is none', () => {
    expect(askedBy(knowing(script))).toEqual([{ kind: 'try', remedy: 'reseat-lead' }]);
    expect(askedBy(knowing({ ...script, remedies: {} }))).toEqual([{ kind: 'visit' }]);
  });
});

function fail(): never {
  throw new Error('no such policy');
}
