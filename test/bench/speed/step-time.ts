import { performance } from 'node:perf_hooks';
import { advance, type Call, openCall } from '../../../src/call/call.js';
import type { CallHeader } from '../../../src/call/events.js';
import { RECORD_FORMAT } from '../../../src/call/events.js';
import { diceOf } from '../../../src/call/rehearsal/dice.js';
import { inventCaller } from '../../../src/call/rehearsal/invent-caller.js';
import { playScript } from '../../../src/call/scripted-call.js';
import { VERSION } from '../../../src/call/version.js';
import { fresh } from '../../../src/findings/run-engine.js';
import { modelOf } from '../../../src/ranking/model.js';
import type { RuleBase } from '../../../src/rulebase/records.js';

/** How long a step takes, in milliseconds of this process: never to be quoted but as a ratio of one run. */
export interface StepTimes {
  readonly median: number;
  readonly p99: number;
  readonly steps: number;
}

const HEADER: CallHeader = {
  ...{ record: RECORD_FORMAT, id: 'bench', opened: '2026-11-25T09:00:00.000Z', whydark: VERSION },
  ...{ rules: { version: '0', digest: '' }, role: 'site' },
};

/**
 * Times each event after the opening of so many calls with invented callers; the first call warms up and is not
 * counted.
 */
export async function stepTimes(
  rules: RuleBase,
  calls: number,
  callers: RuleBase = rules,
): Promise<StepTimes> {
  const times: number[] = [];
  for (let seed = 0; seed <= calls; seed++) {
    const dice = diceOf(seed + 1);
    const causes = callers.causes.map(({ id }) => id);
    const cause = dice.oneOf(causes) ?? '';
    const script = inventCaller(callers, cause, { truth: modelOf(callers), wrong: 0, cantTell: 0 }, dice);
    const { events } = await playScript(callers, '', script, 'bench');
    let call: Call = await openCall(rules, '', HEADER);
    for (const event of events) {
      const begun = performance.now();
      const next = await advance(call, event);
      const took = performance.now() - begun;
      if (!next.ok) break;
      call = next.value;
      // The opening weighs nothing, and would make the steps that do look cheap.
      if (seed > 0 && !isOpening(call)) times.push(took);
    }
  }
  return { median: at(times, 0.5), p99: at(times, 0.99), steps: times.length };
}

function isOpening({ step }: Call): boolean {
  return step.kind === 'ask' && step.purpose.kind === 'opening';
}

/** Median time of one json-rules-engine run over all rules of the rule base, every fact known. */
export async function engineTime(rules: RuleBase, runs: number): Promise<number> {
  const facts = new Map(
    [...rules.questions, ...rules.facts, ...rules.findings].map(({ id }) => [
      id,
      { value: 'nothing of the kind', lines: [], basis: [] },
    ]),
  );
  const named = rules.findings.flatMap((finding) =>
    finding.rules.map((rule, index) => ({ name: `${finding.id} ${index}`, finding: finding.id, rule })),
  );
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const begun = performance.now();
    await fresh(named, facts);
    times.push(performance.now() - begun);
  }
  return at(times, 0.5);
}

function at(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}
