import { describe, expect, it } from 'vitest';
import { diagnosisOf } from '../../src/call/call.js';
import type { CallEvent } from '../../src/call/events.js';
import { asJson } from '../../src/cli/commands/diagnose.js';
import { agreed, played, said, tried } from '../call/play.js';
import { misfits } from './validator.js';

const HERE = said('at-site', 'here');
const DARK = said('lights', 'off');
const numbers = [
  said('camera-address', '172.23.40.57'),
  said('camera-mask', '255.255.255.0'),
  said('camera-gateway', '172.23.41.1'),
];

/** A call for each kind of verdict and each kind of step. */
const CALLS: readonly (readonly [kind: string, next: RegExp, events: readonly CallEvent[]])[] = [
  ['named', /^ask:/, []],
  ['named', /^try:/, [HERE, DARK]],
  ['named', /^check-answers:/, [HERE, DARK, said('other-phone', true)]],
  ['named', /^spoilt-check:/, [HERE, DARK, said('socket', 'dead'), said('loose', true)]],
  ['open', /^read-back:/, [HERE, said('lights', 'on'), ...numbers]],
  [
    'named',
    /^visit$/,
    [
      HERE,
      DARK,
      said('socket', 'live'),
      tried('jiggle', 'yes'),
      tried('plug-in', 'yes'),
      DARK,
      said('socket', 'live'),
      said('account', true),
      ...['account', 'socket', 'lights'].map(agreed),
    ],
  ],
  ['restored', /^end:/, [HERE, DARK, tried('jiggle', 'yes', 'yes')]],
  ['restored', /^end:/, [HERE, DARK, tried('plug-in', 'yes', 'yes')]],
  ['nothing', /^end:/, [HERE, DARK, tried('watch', 'yes', 'yes')]],
  ['may-not-ask', /^end:/, [said('at-site', 'stranger')]],
  ['out-of-scope', /^end:/, [said('at-site', 'doorbell')]],
  [
    'nothing',
    /./,
    [
      HERE,
      said('lights', 'on'),
      said('account', true),
      ...['sign-in-again', 'plug-in', 'correct-gateway'].map((id) => tried(id, 'no')),
      said('lights', 'on'),
    ],
  ],
  [
    'other',
    /./,
    [
      HERE,
      ...['sign-in-again', 'plug-in', 'correct-gateway', 'swap-lead', 'watch'].map((id) => tried(id, 'yes')),
      DARK,
      said('account', true),
    ],
  ],
];

describe('what --json prints', () => {
  it.each(CALLS)(
    'fits the published schema where the verdict is %s and the next step %s',
    async (kind, next, events) => {
      const call = await played(events);
      expect(diagnosisOf(call).verdict.kind).toBe(kind);
      expect(diagnosisOf(call).next).toMatch(next);
      expect(misfits(asJson(call))).toEqual([]);
    },
  );

  it.each<[string, (json: Record<string, unknown>) => void, string]>([
    ['another format', (json) => Object.assign(json, { format: 2 }), '/format'],
    [
      'a field that nobody knows',
      (json) => Object.assign(json, { guess: 1 }),
      'must NOT have additional properties',
    ],
    ['a missing path', (json) => Reflect.deleteProperty(json, 'path'), "must have required property 'path'"],
    [
      'a probability over 1',
      (json) => Object.assign(json.verdict as object, { probability: 1.2 }),
      '/verdict/probability',
    ],
    [
      'a verdict of no known kind',
      (json) => Object.assign(json.verdict as object, { kind: 'hunch' }),
      '/verdict/kind',
    ],
    [
      'a named verdict without its cause',
      (json) => Reflect.deleteProperty(json.verdict as object, 'cause'),
      "must have required property 'cause'",
    ],
    [
      'a remedy in a verdict that names a cause',
      (json) => Object.assign(json.verdict as object, { remedy: 'jiggle' }),
      '/verdict/remedy',
    ],
    ['a short digest', (json) => Object.assign(json.rules as object, { digest: 'abc' }), '/rules/digest'],
    [
      'weight that is no number',
      (json) =>
        Object.assign((json.ranked as { reasons: object[] }[])[0]?.reasons[0] ?? {}, {
          decibans: Number.NaN,
        }),
      '/decibans',
    ],
    ['a step of no known kind', (json) => Object.assign(json, { next: 'sing:loudly' }), '/next'],
  ])('that has %s is refused', async (_, spoil, wanted) => {
    const json = JSON.parse(JSON.stringify(asJson(await played([HERE, DARK]))));
    expect(misfits(json)).toEqual([]);
    spoil(json);
    expect(misfits(json).join('\n')).toContain(wanted);
  });
});
