import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { replay } from '../../../src/call/call.js';
import { type CallEvent, RECORD_FORMAT } from '../../../src/call/events.js';
import { consentsOf } from '../../../src/call/rehearsal/consents.js';
import { diceOf } from '../../../src/call/rehearsal/dice.js';
import { inventCaller } from '../../../src/call/rehearsal/invent-caller.js';
import { rehearse } from '../../../src/call/rehearsal/rehearse.js';
import { tellingsOf } from '../../../src/call/rehearsal/tellings.js';
import {
  isAskedBeforeATry,
  isAskedOfACheck,
  isTriedForItsFaults,
} from '../../../src/call/rehearsal/tried-for-its-faults.js';
import { VERSION } from '../../../src/call/version.js';
import { checkRuleFolder } from '../../../src/files/load-rules.js';
import { modelOf } from '../../../src/ranking/model.js';

const { loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules, digest } = loaded;
const OPENED = '2026-11-25T09:00:00.000Z';

describe('seeded dice', () => {
  it('fall as often as they should, and the same for the same seed', () => {
    const dice = diceOf(7);
    const sixes = Array.from({ length: 6000 }, () => dice.weighted([5, 1])).filter((at) => at === 1).length;
    expect(sixes).toBeGreaterThan(850);
    expect(sixes).toBeLessThan(1150);
    const thrown = (seed: number) => [diceOf(seed).number(), diceOf(seed).falls(0.5)];
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const [once, again] = [thrown(seed), thrown(seed)];
        expect(again).toEqual(once);
      }),
    );
  });

  it('have nothing in common for seeds in a row', () => {
    const firsts = Array.from({ length: 100 }, (_, seed) => diceOf(seed).number());
    expect(firsts.filter((one) => one < 0.5).length).toBeGreaterThan(30);
    expect(firsts.filter((one) => one < 0.5).length).toBeLessThan(70);
  });
});

describe('tellings', () => {
  it('set the very value they are listed under', async () => {
    for (const [finding, byValue] of tellingsOf(rules)) {
      for (const [value, ways] of byValue) {
        const [said] = ways;
        const events = [...(said ?? [])].map(
          ([question, answer]): CallEvent => ({
            at: OPENED,
            type: 'answered',
            question,
            answer,
            origin: 'said',
          }),
        );
        const header = {
          record: RECORD_FORMAT,
          id: 't',
          opened: OPENED,
          whydark: VERSION,
          role: 'desk',
        } as const;
        const played = await replay(
          rules,
          digest,
          { ...header, rules: { version: rules.manifest.version, digest } },
          events,
          { opening: 'skipped' },
        );
        if (!played.ok) throw new Error(played.problem.id);
        const { settled } = played.value.situation;
        // A check that a tester fault spoils says nothing.
        if (settled.testerFaults.length === 0)
          expect(settled.findings.get(finding)?.value, `${finding} ${value}`).toBe(value);
      }
    }
  });
});

describe('a rehearsed call', () => {
  it('is the same for the same seed', async () => {
    expect(await rehearse(rules, digest, 11)).toEqual(await rehearse(rules, digest, 11));
  });

  it('shows what the cause shows: an unplugged camera is mostly dark', () => {
    const callers = { truth: modelOf(rules), wrong: 0, cantTell: 0 };
    const lights = Array.from(
      { length: 100 },
      (_, seed) => inventCaller(rules, 'supply-off', callers, diceOf(seed)).answers['camera-lights'],
    );
    expect(lights.filter((one) => one === 'dead').length).toBeGreaterThan(70);
  });

  it('knows callers who cannot tell', () => {
    const callers = { truth: modelOf(rules), wrong: 0, cantTell: 1 };
    const { answers } = inventCaller(rules, 'supply-off', callers, diceOf(3));
    const later = rules.questions.filter(({ opening }) => opening === undefined);
    expect(later.every(({ id }) => answers[id] === null)).toBe(true);
  });
});

describe('what only opens a gate', () => {
  it('is known, with the answer that opens it, and is not what a finding asks', () => {
    const consents = consentsOf(rules);
    expect(consents.get('owner-agrees')).toBe(true);
    expect(consents.get('danger-signs')).toBe(false);
    expect(consents.has('tries-at-password')).toBe(false);
    const telling = new Set(rules.findings.flatMap(({ asks }) => asks));
    expect([...consents.keys()].filter((id) => telling.has(id))).toEqual([]);
  });

  it('is none where a finding asks for it as well', () => {
    const [finding, ...others] = rules.findings;
    if (!finding) throw new Error('a finding');
    const asking = { ...finding, asks: [...finding.asks, 'owner-agrees'] };
    const consents = consentsOf({ ...rules, findings: [asking, ...others] });
    expect(consents.has('owner-agrees')).toBe(false);
    expect(consents.has('lights-noted')).toBe(true);
  });

  it('is agreed to about as often as in the written cases', () => {
    const callers = { truth: modelOf(rules), wrong: 0, cantTell: 0 };
    const agreed = Array.from(
      { length: 200 },
      (_, seed) => inventCaller(rules, 'camera-hung', callers, diceOf(seed)).answers['owner-agrees'],
    ).filter((one) => one === true);
    expect(agreed.length).toBeGreaterThan(180);
    expect(agreed.length).toBeLessThan(200);
  });
});

describe('a slip of a caller who gets it wrong', () => {
  it('is mostly seen at a second look, as often as the rule base says', () => {
    const callers = { truth: modelOf(rules), wrong: 1, cantTell: 0 };
    const { answers, secondThoughts = {} } = inventCaller(rules, 'camera-hung', callers, diceOf(8));
    const right = inventCaller(rules, 'camera-hung', { ...callers, wrong: 0 }, diceOf(8)).answers;
    const seen = Object.keys(secondThoughts);
    const share = seen.length / Object.keys(answers).length;
    expect(share).toBeGreaterThan(0.6);
    expect(share).toBeLessThan(0.95);
    // These dice are such that the slip about the kind of camera is among those seen.
    // The first findings are thrown before the first slip is, so the truth of the opening is the same.
    expect(secondThoughts['camera-type']).toEqual(right['camera-type']);
  });
});

describe('a rare remedy', () => {
  const copperRun = rules.remedies.find(({ id }) => id === 'copper-run');
  if (!copperRun) throw new Error('the remedy is gone');

  it('is tried in some call with what it mends', async () => {
    expect(await isTriedForItsFaults(rules, digest, copperRun, 120)).toBe(true);
  });

  it('is found out where no call can ever try it', async () => {
    const notBoth = ['wired', 'wifi'].map(
      (value) => ({ fact: 'camera-type', operator: 'equal', value }) as const,
    );
    const dead = { ...copperRun, when: { all: notBoth } };
    const changed = { ...rules, remedies: rules.remedies.map((one) => (one === copperRun ? dead : one)) };
    expect(await isTriedForItsFaults(changed, 'changed', dead, 12)).toBe(false);
  });
});

describe('a question that is only asked before a rare remedy', () => {
  it('is asked in some call with what that remedy mends', async () => {
    expect(await isAskedBeforeATry(rules, digest, 'new-camera-count', 120)).toBe(true);
  });

  it('is asked where the remedy has no gate, but wants it looked at first', async () => {
    const looksFirst = rules.remedies.map((one) => {
      if (one.id !== 'one-by-one-address') return one;
      const { gate, ...others } = one;
      expect(gate).toBeDefined();
      return { ...others, askBefore: ['new-camera-count'] };
    });
    const changed = { ...rules, remedies: looksFirst };
    expect(await isAskedBeforeATry(changed, 'looks first', 'new-camera-count', 120)).toBe(true);
  });

  it('is found out where it stands behind no gate, or none can open', async () => {
    expect(await isAskedBeforeATry(rules, digest, 'wifi-bars', 120)).toBe(false);
    const shut = rules.remedies.map((one) =>
      one.id === 'one-by-one-address' ? { ...one, needs: ['no-such'] } : one,
    );
    expect(await isAskedBeforeATry({ ...rules, remedies: shut }, 'changed', 'new-camera-count', 6)).toBe(
      false,
    );
  });
});

describe('a question that is only asked of a check', () => {
  it('is asked in some call with somebody who checks in that way', async () => {
    expect(await isAskedOfACheck(rules, digest, 'computer-by-hand', 40)).toBe(true);
  });

  it('is found out where no check rests on it, or it takes too long to ask', async () => {
    expect(await isAskedOfACheck(rules, digest, 'wifi-bars', 40)).toBe(false);
    const long = rules.questions.map((one) =>
      one.id === 'computer-by-hand' ? { ...one, minutes: 30 } : one,
    );
    expect(await isAskedOfACheck({ ...rules, questions: long }, 'changed', 'computer-by-hand', 4)).toBe(
      false,
    );
  });

  it('comes with a caller who tells the numbers that the check was made with', () => {
    const [fault] = rules['tester-faults'].filter(({ id }) => id === 'computer-on-another-network');
    if (!fault) throw new Error('the tester fault is gone');
    const callers = { truth: modelOf(rules), wrong: 0, cantTell: 0, testerFault: fault };
    const { corrections = [] } = inventCaller(rules, 'camera-hung', callers, diceOf(3));
    expect(corrections.map(({ question }) => question)).toContain('computer-address');
    expect(corrections.every(({ after }) => after === 'may-ask')).toBe(true);
  });
});
