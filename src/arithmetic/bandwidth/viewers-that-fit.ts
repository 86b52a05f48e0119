import type { Worked } from '../worked.js';
import { PLANNED_SHARE, type UploadInputs } from './line-load.js';

/** A whole number of viewers, at worst and at best. */
export interface Viewers {
  readonly low: number;
  readonly high: number;
}

/** How many can watch at once through the site's upload, each with a stream of their own, 80 % planned with. */
export function viewersThatFit({
  rate,
  cameras,
  upload,
}: Pick<UploadInputs, 'rate' | 'cameras' | 'upload'>): Worked<Viewers> {
  const low = Math.floor((PLANNED_SHARE * upload.low) / (rate.high * cameras.high));
  const high = Math.floor((PLANNED_SHARE * upload.high) / (rate.low * cameras.low));
  if (high === 0) return { value: { low, high }, lines: [{ id: 'bandwidth.viewers-none' }] };
  const line =
    low === high
      ? ({ id: 'bandwidth.viewers-fit', with: { viewers: low } } as const)
      : ({ id: 'bandwidth.viewers-fit-range', with: { low, high } } as const);
  return { value: { low, high }, lines: [line] };
}
