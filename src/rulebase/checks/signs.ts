import type { Sentence } from '../../messages/say.js';
import type { Draft } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { pointer } from '../pointer.js';
import type { Finding, Sign, Signs } from '../records.js';
import { mustExist } from './exists.js';

/** Room for the rounding of sums of decimal shares. */
const ROUNDING = 1e-9;
const NEAR_ENOUGH = 1e-6;

interface PlacedSign {
  readonly file: string;
  readonly pointer: string;
  readonly finding: string;
  readonly sign: Sign;
}

/** Signs name values and words there are, and leave neither more nor less than the other values can share. */
export function checkSigns(draft: Draft, known: Known): readonly RuleFault[] {
  const { manifest, causes, findings } = draft;
  const own = [
    ...causes.flatMap(({ file, record }) => placed(file, '/signs', record.signs)),
    ...placed(manifest.file, '/hypotheses/nothing/signs', manifest.record.hypotheses.nothing.signs),
  ];
  const defaults = findings.flatMap(({ file, record }) =>
    (record.defaults ?? []).map(({ sign }, i) => ({
      file,
      pointer: pointer('defaults', i, 'sign'),
      finding: record.id,
      sign,
    })),
  );
  return [
    ...own.flatMap(({ file, pointer: at, finding }) =>
      mustExist(file, at, finding, known.ids.findings, 'rules.no-such-finding'),
    ),
    ...[...own, ...defaults].flatMap((sign) => checkSign(sign, known)),
    ...findings.flatMap(({ file, record }) => usualShares(file, record)),
  ];
}

function placed(file: string, at: string, signs: Signs): readonly PlacedSign[] {
  return Object.entries(signs).map(([finding, sign]) => ({
    file,
    pointer: at + pointer(finding),
    finding,
    sign,
  }));
}

function checkSign({ file, pointer: at, finding: id, sign }: PlacedSign, known: Known): readonly RuleFault[] {
  const finding = known.findings.get(id);
  if (finding === undefined) return [];
  const names = Object.entries(sign).flatMap(([value, word]) => [
    ...mustExist(
      file,
      at + pointer(value),
      value,
      new Set(Object.keys(finding.values)),
      'rules.no-such-value',
    ),
    ...mustExist(file, at + pointer(value), word, known.words, 'rules.no-such-word'),
  ]);
  if (names.length > 0) return names;
  const says = shares(finding, sign, known);
  return says === undefined ? [] : [error(file, at, says)];
}

function shares(finding: Finding, sign: Sign, known: Known): Sentence | undefined {
  const sum = total(Object.values(sign).map((word) => known.words.get(word) ?? 0));
  const unlisted = Object.entries(finding.values).filter(([value]) => !Object.hasOwn(sign, value));
  if (sum > 1 + ROUNDING) return { id: 'rules.signs-over-one', with: { sum: rounded(sum) } };
  if (unlisted.length === 0) {
    return sum < 1 - NEAR_ENOUGH ? { id: 'rules.signs-under-one', with: { sum: rounded(sum) } } : undefined;
  }
  const room = total(unlisted.map(([, { usual }]) => usual));
  if (sum >= 1 - ROUNDING || room > 0) return undefined;
  return {
    id: 'rules.nothing-to-share',
    with: { left: rounded(1 - sum), values: unlisted.map(([value]) => value).join(', ') },
  };
}

function usualShares(file: string, finding: Finding): readonly RuleFault[] {
  const sum = total(Object.values(finding.values).map(({ usual }) => usual));
  if (Math.abs(sum - 1) <= NEAR_ENOUGH) return [];
  return [error(file, '/values', { id: 'rules.usual-not-one', with: { sum: rounded(sum) } })];
}

function total(shares: readonly number[]): number {
  return shares.reduce((sum, share) => sum + share, 0);
}

function rounded(share: number): number {
  return Math.round(share * 1e6) / 1e6;
}
