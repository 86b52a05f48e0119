import type { MessageId, Sentence } from '../../messages/say.js';
import type { Between } from '../../values/between.js';
import { showBitRates } from '../../values/bit-rate.js';
import { showRange } from '../../values/rounded.js';
import { type Judged, judge, type Verdict } from '../judge.js';
import type { Worked } from '../worked.js';

/** The share of a measured rate that may be planned with: planning practice, from memory. */
export const PLANNED_SHARE = 0.8;

/** Bit rates in bit/s and counts, each perhaps a range. */
export interface UploadInputs {
  /** Of one camera's stream. */
  readonly rate: Between;
  readonly cameras: Between;
  readonly viewers: Between;
  readonly upload: Between;
}

export type Copies = 'each' | 'once';

const UPLOAD_WORDS = {
  fine: 'bandwidth.upload-fits',
  doubtful: 'bandwidth.upload-may-fit',
  impossible: 'bandwidth.upload-too-much',
} as const satisfies Record<Verdict, MessageId>;

const DOWNLOAD_WORDS = {
  fine: 'bandwidth.download-fits',
  doubtful: 'bandwidth.download-may-fit',
  impossible: 'bandwidth.download-too-much',
} as const satisfies Record<Verdict, MessageId>;

/**
 * Whether the pictures fit through the site's upload: the sum of the streams sent at once must stay
 * under 80 % of the measured rate (planning practice, from memory). `once`: a service hands the stream
 * on, so that it is sent once however many watch.
 */
export function uploadLoad(inputs: UploadInputs, copies: Copies): Worked<Judged<keyof UploadInputs>> {
  const { rate, cameras, upload } = inputs;
  const viewers = copies === 'each' ? inputs.viewers : ONE;
  const value = judge(
    { rate, cameras, viewers, upload },
    (at) => PLANNED_SHARE * at.upload - at.rate * at.cameras * at.viewers,
  );
  const need = times(rate, cameras, viewers);
  const said = { ...rateAndCameras(rate, cameras), viewers: count(viewers), need: showBitRates(need) };
  return {
    value,
    lines: [
      { id: copies === 'each' ? 'bandwidth.sent-each' : 'bandwidth.sent-once', with: said },
      usable('bandwidth.upload-usable', 'upload', upload),
      { id: UPLOAD_WORDS[value.verdict] },
    ],
  };
}

/** The streams that one phone receives at once. */
export interface DownloadInputs {
  readonly rate: Between;
  readonly cameras: Between;
  readonly download: Between;
}

/** Whether what one phone shows fits through its download, with the same share to plan with. */
export function downloadLoad(inputs: DownloadInputs): Worked<Judged<keyof DownloadInputs>> {
  const { rate, cameras, download } = inputs;
  const value = judge(
    { rate, cameras, download },
    (at) => PLANNED_SHARE * at.download - at.rate * at.cameras,
  );
  const need = showBitRates(times(rate, cameras));
  return {
    value,
    lines: [
      { id: 'bandwidth.received', with: { ...rateAndCameras(rate, cameras), need } },
      usable('bandwidth.download-usable', 'download', download),
      { id: DOWNLOAD_WORDS[value.verdict] },
    ],
  };
}

const ONE: Between = { low: 1, high: 1, isGuess: false };

function times(...factors: readonly Between[]): Pick<Between, 'low' | 'high'> {
  return factors.reduce((product, { low, high }) => ({ low: product.low * low, high: product.high * high }), {
    low: 1,
    high: 1,
  });
}

function usable(id: MessageId, name: 'upload' | 'download', rate: Between): Sentence {
  const planned = { low: rate.low * PLANNED_SHARE, high: rate.high * PLANNED_SHARE };
  return { id, with: { [name]: showBitRates(rate), usable: showBitRates(planned) } };
}

function rateAndCameras(rate: Between, cameras: Between) {
  return { rate: showBitRates(rate), cameras: count(cameras) };
}

function count({ low, high }: Between): string {
  return showRange(low, high, '');
}
