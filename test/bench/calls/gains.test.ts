import { describe, expect, it } from 'vitest';
import { blur } from '../../../src/ranking/blur.js';
import { modelOf } from '../../../src/ranking/model.js';
import { bitsOnCause, bitsOnSide } from './gains.js';
import { see } from './happen.js';
import { opened } from './opened.js';
import { rules } from './rule-base.js';

const model = modelOf(rules);
const script = {
  title: '',
  story: '',
  opened: '2026-11-25T09:00:00.000Z',
  role: 'desk',
  answers: {},
  remedies: {},
} as const;
const { situation } = see(rules, model, opened(rules, model, script).state);

/** Mutual information as it is defined, over pairs: Cover and Thomas, Elements of Information Theory, eq. 2.28. */
function byDefinition(joint: readonly (readonly number[])[]): number {
  const total = joint.flat().reduce((sum, one) => sum + one, 0);
  const columns = (joint[0] ?? []).map((_, c) => joint.reduce((sum, row) => sum + (row[c] ?? 0), 0) / total);
  let bits = 0;
  for (const row of joint) {
    const across = row.reduce((sum, one) => sum + one, 0) / total;
    row.forEach((one, c) => {
      if (one > 0) bits += (one / total) * Math.log2(one / total / (across * (columns[c] ?? 0)));
    });
  }
  return bits;
}

describe('information of a finding', () => {
  it('is the mutual information with the cause, and with the side', () => {
    for (const id of ['sign-of-life', 'local-page', 'mobile-web']) {
      const finding = rules.findings.find((one) => one.id === id);
      const layout = model.findings.get(id);
      if (!finding || !layout) throw new Error(id);
      const rate = 1 - 0.95 ** finding.asks.length;
      const joint = layout.shares.map((row) =>
        row.map((share, h) => blur(share, rate, layout.values.length) * (situation.probabilities[h] ?? 0)),
      );
      expect(bitsOnCause(situation, finding, situation.probabilities)).toBeCloseTo(byDefinition(joint), 10);
      const isCamera = model.hypotheses.map(
        ({ stage }) => rules.manifest.stages.find((one) => one.id === stage)?.side === 'camera',
      );
      const side = (wanted: boolean) =>
        situation.probabilities.map((p, h) => (isCamera[h] === wanted ? p : 0));
      const halves = joint.map((row) =>
        [true, false].map((wanted) =>
          row.reduce((sum, one, h) => sum + (isCamera[h] === wanted ? one : 0), 0),
        ),
      );
      expect(bitsOnSide(situation, finding, [side(true), side(false)])).toBeCloseTo(byDefinition(halves), 10);
    }
  });
});
