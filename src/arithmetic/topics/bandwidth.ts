import type { MessageId, Sentence } from '../../messages/say.js';
import { anyOf, type Between, exactly, parseBetween } from '../../values/between.js';
import { parseBitRate, showBitRates } from '../../values/bit-rate.js';
import { parseHoursADay } from '../../values/duration.js';
import { parseCount } from '../../values/measure.js';
import { ok, problem, type Result } from '../../values/result.js';
import { downloadLoad, uploadLoad } from '../bandwidth/line-load.js';
import { mobileData } from '../bandwidth/mobile-data.js';
import { viewersThatFit } from '../bandwidth/viewers-that-fit.js';
import { type Judged, worstOf } from '../judge.js';
import { needed, optional, parseChoice, readGiven } from './read-given.js';
import type { Given, Reckoning, Topic } from './topic.js';

type Stream = 'main' | 'sub';

/** What is taken where nobody knows, in bit/s and counts; judged, no source. */
const USUAL = {
  main: { low: 1e6, high: 12e6 },
  sub: { low: 0.25e6, high: 1e6 },
  line: { low: 0.3e6, high: 1e9 },
  cameras: { low: 1, high: 4 },
  viewers: { low: 1, high: 4 },
  hours: { low: 0.25, high: 4 },
} as const;

const READS = {
  stream: optional(parseChoice(['main', 'sub']), 'main'),
  main: optional(rates(USUAL.main), anyOf(USUAL.main)),
  sub: optional(rates(USUAL.sub), anyOf(USUAL.sub)),
  upload: needed(rates(USUAL.line)),
  download: optional(rates(USUAL.line), undefined),
  cameras: optional(counts(64, USUAL.cameras), exactly(1)),
  viewers: optional(counts(1000, USUAL.viewers), exactly(1)),
  copies: optional(parseChoice(['each', 'once']), 'each'),
  hours: optional((text) => parseBetween(text, parseHoursADay, USUAL.hours), exactly(1)),
} as const;

/** Whether the picture fits through the site's upload and the phone's download, and what it costs. */
export const BANDWIDTH: Topic = {
  id: 'bandwidth',
  title: 'bandwidth.title',
  inputs: [
    {
      id: 'stream',
      ask: 'bandwidth.ask-stream',
      choices: [
        { id: 'main', title: 'bandwidth.stream-main' },
        { id: 'sub', title: 'bandwidth.stream-sub' },
      ],
      optional: true,
    },
    { id: 'main', ask: 'bandwidth.ask-main', optional: true },
    { id: 'sub', ask: 'bandwidth.ask-sub', optional: true },
    { id: 'upload', ask: 'bandwidth.ask-upload' },
    { id: 'download', ask: 'bandwidth.ask-download', optional: true },
    { id: 'cameras', ask: 'bandwidth.ask-cameras', optional: true },
    { id: 'viewers', ask: 'bandwidth.ask-viewers', optional: true },
    {
      id: 'copies',
      ask: 'bandwidth.ask-copies',
      choices: [
        { id: 'each', title: 'bandwidth.copies-each' },
        { id: 'once', title: 'bandwidth.copies-once' },
      ],
      optional: true,
    },
    { id: 'hours', ask: 'bandwidth.ask-hours', optional: true },
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
  const { stream, cameras, upload, hours, copies } = inputs.value;
  const rate = inputs.value[stream];
  const load = loadOf(inputs.value, stream);
  const viewers = viewersThatFit({ rate, cameras, upload });
  const data = mobileData(rate, cameras, hours);
  const advised = advice(inputs.value);
  return ok({
    ...load.value,
    lines: [
      { id: RATE_WORDS[stream], with: { rate: showBitRates(rate) } },
      ...guessed(rate),
      ...load.lines,
      ...(copies === 'each' ? viewers.lines : []),
      ...data.lines,
      { id: ADVICE_WORDS[advised] },
    ],
    data: {
      stream,
      streamThatFits: advised,
      ...(copies === 'each' ? { viewersThatFit: viewers.value } : {}),
      mobileBytesAnHour: data.value.hour,
      mobileBytesAMonth: data.value.month,
    },
  });
}

const RATE_WORDS = {
  main: 'bandwidth.rate-main',
  sub: 'bandwidth.rate-sub',
} as const satisfies Record<Stream, MessageId>;

const ADVICE_WORDS = {
  main: 'bandwidth.use-main',
  sub: 'bandwidth.use-sub',
  neither: 'bandwidth.use-neither',
} as const satisfies Record<Stream | 'neither', MessageId>;

function advice(inputs: Inputs): Stream | 'neither' {
  const fits = (stream: Stream): boolean => loadOf(inputs, stream).value.verdict === 'fine';
  return fits('main') ? 'main' : fits('sub') ? 'sub' : 'neither';
}

function loadOf(inputs: Inputs, stream: Stream) {
  const rate = inputs[stream];
  const { cameras, viewers, upload, download, copies } = inputs;
  const loads = [
    uploadLoad({ rate, cameras, viewers, upload }, copies),
    ...(download === undefined ? [] : [downloadLoad({ rate, cameras, download })]),
  ];
  const { verdict, decides } = worstOf<string>(loads.map(({ value }) => value));
  const value: Judged<string> =
    decides === undefined ? { verdict } : { verdict, decides: decides === 'rate' ? stream : decides };
  return { value, lines: loads.flatMap(({ lines }) => lines) };
}

function guessed(rate: Between): readonly Sentence[] {
  return rate.isGuess ? [{ id: 'bandwidth.rate-guessed', with: { rate: showBitRates(rate) } }] : [];
}

function rates(usual: { readonly low: number; readonly high: number }) {
  return (text: string): Result<Between> => parseBetween(text, someRate, usual);
}

/** A stream or a line of no bits at all is a slip of the pen. */
function someRate(text: string): Result<number> {
  const rate = parseBitRate(text);
  if (!rate.ok || rate.value >= LEAST_RATE) return rate;
  return problem({
    id: 'bandwidth.rate-too-low',
    with: { least: showBitRates({ low: LEAST_RATE, high: LEAST_RATE }) },
  });
}

const LEAST_RATE = 8000;

function counts(most: number, usual: { readonly low: number; readonly high: number }) {
  return (text: string): Result<Between> => parseBetween(text, (one) => parseCount(one, 1, most), usual);
}
