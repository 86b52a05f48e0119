import type { Between } from './between.js';
import { type Measure, parseMeasure } from './measure.js';
import { ok, problem, type Result } from './result.js';
import { rounded, showRange } from './rounded.js';
import { quoted } from './tidy.js';

function shares(min: number, max: number): Measure {
  return { units: [{ unit: '%', size: 0.01 }], bare: '%', min, max, example: '20 %' };
}

/**
 * The share a person typed in per cent, as a number from `min` to `max` (0 to 1). A bare number under 1
 * may mean a part of one or a part of a hundred and is refused.
 */
export function parseShare(text: string, min: number, max: number): Result<number> {
  const share = parseMeasure(text, shares(min, max));
  if (!/^ *0?[.,]\d+ *$/.test(text)) return share;
  const part = Number(text.trim().replace(',', '.'));
  if (part === 0) return min === 0 ? ok(0) : share;
  const said = { text: quoted(text), percent: rounded(part * 100), small: rounded(part) };
  return problem({ id: 'amount.share-unclear', with: said });
}

/** A share in per cent. */
export function showShare(share: number): string {
  return `${rounded(share * 100)} %`;
}

/** A range of shares in per cent. */
export function showShares(share: Pick<Between, 'low' | 'high'>): string {
  return showRange(share.low * 100, share.high * 100, '%');
}
