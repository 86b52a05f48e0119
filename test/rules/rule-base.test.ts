import { describe, expect, it } from 'vitest';
import { checkRuleFolder } from '../../src/files/load-rules.js';
import { modelOf } from '../../src/ranking/model.js';
import { review } from '../../src/ranking/review/review.js';
import { mentions } from '../../src/rulebase/mentions.js';
import type { Question } from '../../src/rulebase/records.js';

const { faults, loaded } = await checkRuleFolder('rules', 'rules/schema');
if (!loaded) throw new Error('the rule base does not load');
const { rules } = loaded;

/** Causes whose own signs or whose stage's default look at a finding that this question helps to settle. */
function causesBehind({ id }: Question): ReadonlySet<string> {
  const findings = rules.findings.filter(({ asks }) => asks.includes(id));
  const stages = rules.manifest.stages.map((stage) => stage.id);
  const causes = rules.causes.filter((cause) =>
    findings.some(
      (finding) =>
        cause.signs[finding.id] !== undefined ||
        finding.defaults?.some(
          ({ from, to, side }) =>
            stages.indexOf(cause.stage) >= stages.indexOf(from) &&
            stages.indexOf(cause.stage) <= stages.indexOf(to) &&
            (side === undefined || rules.manifest.stages.find(({ id }) => id === cause.stage)?.side === side),
        ),
    ),
  );
  return new Set(causes.map((cause) => cause.id));
}

describe('the rule base as shipped', () => {
  it('has no fault, not even a warning, one by one and together', () => {
    expect(faults).toEqual([]);
    expect(review(rules, modelOf(rules))).toEqual([]);
  });

  it('names causes in every stage, and has every kind of record', () => {
    const stages = new Set(rules.causes.map(({ stage }) => stage));
    expect(rules.manifest.stages.map(({ id }) => id).filter((id) => !stages.has(id))).toEqual([]);
    expect(rules.manifest.stages).toHaveLength(14);
    expect(rules.causes.length).toBeGreaterThanOrEqual(55);
    expect(rules.questions.length).toBeGreaterThanOrEqual(50);
    expect(rules.findings.length).toBeGreaterThanOrEqual(50);
    expect(rules.remedies.length).toBeGreaterThanOrEqual(45);
    expect(rules.contradictions.length).toBeGreaterThan(0);
    expect(rules.cautions.length).toBeGreaterThan(0);
    expect(rules['tester-faults'].length).toBeGreaterThan(0);
  });

  it('lets at least half of the questions bear on three causes or more', () => {
    const bearing = rules.questions.filter((question) => causesBehind(question).size >= 3);
    expect(bearing.length / rules.questions.length).toBeGreaterThanOrEqual(0.5);
  });

  it.each(rules.questions.map((question) => [question.id, question] as const))(
    'the prompt of %s names no cause and can be said in one breath',
    (_, { prompt }) => {
      const said = prompt.toLowerCase();
      expect(
        rules.causes.filter(({ title }) => said.includes(title.toLowerCase())).map(({ id }) => id),
      ).toEqual([]);
      // About three words a second; ten seconds is a long breath.
      expect(prompt.split(/\s+/).length).toBeLessThanOrEqual(30);
      expect(prompt).toMatch(/[.?]$/);
      expect(prompt).not.toMatch(/\b(subnet|DHCP|NAT|gateway address|DNS server|PoE|VLAN|ARP)\b/);
    },
  );

  it('asks for no password anywhere', () => {
    const asking = rules.questions.filter(
      ({ answer, prompt }) => answer.type === 'text' && /password/i.test(prompt),
    );
    expect(asking.map(({ id }) => id)).toEqual([]);
  });

  it('keeps every restart, reset and change of address behind a gate', () => {
    const guarded = [
      'restart-camera',
      'restart-router',
      'format-card',
      'new-address-in-range',
      'old-range-back',
    ];
    const open = guarded.filter((id) => !rules.remedies.find((remedy) => remedy.id === id)?.gate);
    expect(open).toEqual([]);
  });

  it('never proposes factory settings', () => {
    const texts = rules.remedies.flatMap(({ id, steps }) => steps.map((step) => ({ id, step })));
    expect(texts.filter(({ step }) => /factory|reset button/i.test(step)).map(({ id }) => id)).toEqual([]);
  });

  it('gives every remedy up a ladder to the installer, with its caution', () => {
    const climbing = rules.remedies.filter(({ place }) => place === 'camera');
    expect(climbing.filter(({ who }) => who !== 'installer').map(({ id }) => id)).toEqual([]);
    expect(climbing.filter(({ cautions = [] }) => !cautions.includes('ladder')).map(({ id }) => id)).toEqual(
      [],
    );
  });

  it('needs every fact that a gate mentions to come from a question or a sum', () => {
    const known = new Set([...rules.questions, ...rules.facts, ...rules.findings].map(({ id }) => id));
    const gates = rules.remedies.flatMap(({ gate }) => (gate ? mentions(gate.condition) : []));
    expect(gates.filter((id) => !known.has(id))).toEqual([]);
  });
});
