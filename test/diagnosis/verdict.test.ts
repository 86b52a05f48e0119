import { describe, expect, it } from 'vitest';
import type { DefectReport, Ranked } from '../../src/diagnosis/diagnosis.js';
import { verdictOf } from '../../src/diagnosis/verdict.js';
import { fill } from '../../src/messages/say.js';
import type { Ending, Step } from '../../src/steps/step.js';
import { TINY } from '../call/tiny-rule-base.js';

const ASK: Step = { kind: 'ask', question: 'lights', group: ['lights'], purpose: { kind: 'opening' } };
const end = (how: Ending): Step => ({ kind: 'end', how });

/**
 * One row a case: what leads and how surely; a defect that arithmetic shows; how the call stands; and the verdict
 * as a person reads it. `-` stands for none.
 */
const TABLE = `
  leads             share   runner-up      defect         call stands           kind          cause             confidence      says
  supply-off        0.97    -              -              going on              named         supply-off        almost-certain  Verdict of supply-off.
  supply-off        0.95    -              -              going on              named         supply-off        almost-certain  Verdict of supply-off.
  supply-off        0.94    -              -              going on              named         supply-off        very-likely     Verdict of supply-off.
  supply-off        0.80    -              -              going on              named         supply-off        very-likely     Verdict of supply-off.
  supply-off        0.79    -              -              going on              named         supply-off        likely          Verdict of supply-off.
  supply-off        0.50    lead-broken    -              going on              named         supply-off        likely          Verdict of supply-off.
  supply-off        0.49    lead-broken    -              going on              open          -                 possible        Not decided yet. Still possible: supply-off; lead-broken.
  supply-off        0.24    lead-broken    -              going on              open          -                 not-enough      Not decided yet. Still possible: supply-off; lead-broken.
  supply-off        0.49    lead-broken    gateway-wrong  going on              open          gateway-wrong     possible        A fault is found, but it may not be the only one. A sum shows it.
  supply-off        0.60    lead-broken    gateway-wrong  going on              named         supply-off        likely          Verdict of supply-off.
  other-in-power    0.60    -              -              going on              other         -                 likely          other-in-power
  nothing           0.60    -              -              going on              nothing       -                 likely          The picture is there now. Nothing is wrong at this moment.
  supply-off        1.00    -              -              back after plug-in    restored      supply-off        almost-certain  The picture is back after "Title of plug-in". That mends one thing only: supply-off.
  supply-off        0.70    lead-broken    -              back after jiggle     restored      supply-off        likely          The picture is back after "Title of jiggle". The cause is not proven; likeliest: supply-off.
  gateway-wrong     0.70    lead-broken    gateway-wrong  back after jiggle     restored      gateway-wrong     likely          The picture is back after "Title of jiggle". The sum had proven the fault: gateway-wrong.
  nothing           1.00    -              -              back after watch      nothing       -                 almost-certain  The picture is there now. Nothing is wrong at this moment.
  supply-off        0.97    -              -              may not ask           may-not-ask   -                 not-enough      Nothing was looked into: the caller may not ask for this camera. Its owner has to call.
  supply-off        0.97    -              gateway-wrong  out of scope          out-of-scope  -                 not-enough      Nothing was looked into: this camera is of a kind that this guide does not cover.
`;

const [head = '', ...rows] = TABLE.split('\n').filter((line) => line.trim() !== '');
const starts = [...head.matchAll(/\S+(?: \S+)*/g)].map(({ index }) => index);
const cells = (row: string): readonly string[] =>
  starts.map((from, at) => row.slice(from, starts[at + 1]).trim());

function ranked(id: string, probability: number): Ranked {
  const kind = id === 'nothing' ? 'nothing' : id.startsWith('other-') ? 'other' : 'cause';
  return { id, kind, title: id, probability, reasons: [] };
}

describe('the verdict', () => {
  it('has a row for every kind', () => {
    expect(new Set(rows.map((row) => cells(row)[5]))).toEqual(
      new Set(['named', 'open', 'other', 'nothing', 'restored', 'may-not-ask', 'out-of-scope']),
    );
  });

  it.each(rows)('%s', (row) => {
    const [leads = '', share, runnerUp = '-', defect, stands = '', kind, cause, confidence, says] =
      cells(row);
    const list = [ranked(leads, Number(share)), ...(runnerUp === '-' ? [] : [ranked(runnerUp, 0.1)])];
    const shown: readonly DefectReport[] =
      defect === '-' || defect === undefined
        ? []
        : [{ finding: 'gateway-place', grade: 'proven', says: 'A sum shows it.', cause: defect, lines: [] }];
    const back = /^back after (.*)$/.exec(stands)?.[1];
    const step =
      back !== undefined
        ? end('picture-back')
        : stands === 'going on'
          ? ASK
          : end(stands.replaceAll(' ', '-') as Ending);
    const verdict = verdictOf(TINY, list, shown, step, back);
    expect([verdict.kind, verdict.cause ?? '-', verdict.confidence, verdict.says]).toEqual([
      kind,
      cause,
      confidence,
      says,
    ]);
    expect(verdict.confirmed).toBe(kind === 'restored' ? !says?.includes('not proven') : undefined);
    expect(verdict.remedy).toBe(kind === 'restored' ? back : undefined);
  });

  it('takes a fault that only follows from numbers as no proof of what was mended', () => {
    const follows: DefectReport = {
      finding: 'gateway-place',
      grade: 'follows',
      says: 'x',
      cause: 'gateway-wrong',
      lines: [],
    };
    const verdict = verdictOf(TINY, [ranked('gateway-wrong', 0.7)], [follows], end('picture-back'), 'jiggle');
    expect(verdict.confirmed).toBe(false);
    expect(verdict.says).toContain('not proven');
  });

  it('names no more than three causes where none leads', () => {
    const list = ['a', 'b', 'c', 'd'].map((id) => ranked(id, 0.2));
    expect(verdictOf(TINY, list, [], ASK, undefined).says).toBe(
      fill('Not decided yet. Still possible: {all}.', { all: 'a; b; c' }),
    );
  });
});
