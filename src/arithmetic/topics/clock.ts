import type { MessageId, Sentence } from '../../messages/say.js';
import { parseWindow } from '../../values/duration.js';
import { type Moment, parseMoment } from '../../values/moment.js';
import { ok, problem, type Result } from '../../values/result.js';
import { parseZone } from '../../values/zone.js';
import { type Validity, validityAt } from '../clock/certificate.js';
import { foundInstead } from '../clock/found-instead.js';
import { clockMistake } from '../clock/mistake.js';
import { clockOffset } from '../clock/offset.js';
import { TOKEN_WINDOW_SECONDS, tokenWindow } from '../clock/token-window.js';
import { type Judged, worstOf } from '../judge.js';
import type { Worked } from '../worked.js';
import { needed, optional, orUnknown, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

const moment = optional(orUnknown(parseMoment), undefined);
const READS = {
  camera: needed(parseMoment),
  truth: needed(parseMoment),
  zone: optional(orUnknown(parseZone), undefined),
  from: moment,
  until: moment,
  window: optional(parseWindow, TOKEN_WINDOW_SECONDS),
  event: moment,
} as const;

/** What a camera's clock is off by, what that does to certificates and sign-in, and where recordings stand. */
export const CLOCK: Topic = {
  id: 'clock',
  title: 'clock.title',
  inputs: [
    { id: 'camera', ask: 'clock.ask-camera' },
    { id: 'truth', ask: 'clock.ask-truth' },
    { id: 'zone', ask: 'clock.ask-zone', optional: true },
    { id: 'from', ask: 'clock.ask-from', optional: true },
    { id: 'until', ask: 'clock.ask-until', optional: true },
    { id: 'window', ask: 'clock.ask-window', optional: true },
    { id: 'event', ask: 'clock.ask-event', optional: true },
  ],
  reckon,
};

type Inputs = Extract<ReturnType<typeof read>, { readonly ok: true }>['value'];

function read(given: Given) {
  return readGiven(given, READS);
}

function reckon(given: Given): Result<Reckoning> & { readonly input?: string } {
  const inputs = read(given);
  if (!inputs.ok) return inputs;
  const { camera, truth, from, until, window, event } = inputs.value;
  if (from !== undefined && until !== undefined && until.seconds < from.seconds) {
    return { ...problem({ id: 'clock.until-before-from' }), input: 'until' };
  }
  const offset = clockOffset(camera, truth);
  const token = tokenWindow(offset.value, window, camera.within < truth.within ? 'truth' : 'camera');
  const mistake = clockMistake(camera, offset.value);
  const certificate = certificateParts(inputs.value);
  const found = event === undefined ? undefined : foundInstead(event, offset.value);
  return ok({
    ...worstOf<string>([token.value, ...certificate.map(({ value }) => value)]),
    lines: [
      ...offset.lines,
      ...mistake.lines,
      ...token.lines,
      ...(mistake.value === 'zone' || mistake.value === 'summer-time' ? ZONE_ONLY : []),
      ...certificate.flatMap(({ lines }) => lines),
      ...(found?.lines ?? []),
      ...(mistake.value === 'none' ? [] : NOTE_FIRST),
    ],
    data: {
      offsetSeconds: offset.value,
      mistake: mistake.value,
      ...(found === undefined ? {} : { foundAtSeconds: found.value }),
    },
  });
}

const ZONE_ONLY: readonly Sentence[] = [{ id: 'clock.token-utc' }];
const NOTE_FIRST: readonly Sentence[] = [{ id: 'clock.note-first' }];

/** Certificates count in UTC: a zone given for the site stands in for one that a time lacks. */
function zoned(time: Moment, zoneMinutes: number | undefined): Moment {
  return time.zoneMinutes !== undefined || zoneMinutes === undefined ? time : { ...time, zoneMinutes };
}

function certificateParts(inputs: Inputs): readonly Worked<Judged<'zone'>>[] {
  const { camera, truth, zone, from, until } = inputs;
  if (from === undefined && until === undefined) return [];
  // Printed without a zone, a certificate's dates are UTC (RFC 5280, section 4.1.2.5).
  const certificate = {
    from: zoned(from ?? LONG_AGO, 0),
    until: until === undefined ? undefined : zoned(until, 0),
  };
  const byCamera = validityAt(zoned(camera, zone), certificate);
  const byTruth = validityAt(zoned(truth, zone), certificate);
  const conclusion = conclusionOf(byCamera.value, byTruth.value);
  return [
    {
      value: judged(byCamera.value),
      lines: [
        { id: 'clock.by-camera' },
        ...byCamera.lines,
        { id: 'clock.by-truth' },
        ...byTruth.lines,
        ...(conclusion === undefined ? [] : [{ id: conclusion }]),
      ],
    },
  ];
}

const LONG_AGO: Moment = { kind: 'moment', seconds: 0, within: 1, zoneMinutes: 0 };

function judged(byCamera: Validity): Judged<'zone'> {
  if (byCamera === 'not-told') return { verdict: 'doubtful', decides: 'zone' };
  return { verdict: byCamera === 'valid' ? 'fine' : 'impossible' };
}

function conclusionOf(byCamera: Validity, byTruth: Validity): MessageId | undefined {
  if (byCamera === 'not-told' || byTruth === 'not-told') return undefined;
  if (byTruth === 'valid') return byCamera === 'valid' ? 'clock.certificate-good' : 'clock.clock-at-fault';
  return byCamera === 'valid' ? 'clock.hides-expiry' : 'clock.certificate-at-fault';
}
