import { typedUnit } from '../../values/quantity.js';
import { ok, problem, type Result } from '../../values/result.js';
import { quoted } from '../../values/tidy.js';
import { CURRENT, LENGTH, POWER } from '../../values/units/dimension.js';
import { parseRange } from '../../values/units/parse-range.js';
import { type Volts, type Watts, watts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { isSameUnit } from '../../values/units.js';
import type { Draw, Other } from './dc-run.js';

/** Common practice, no source: what infrared adds. */
const NIGHT_WATTS: Range<Watts> = { least: watts(0), most: watts(8) };
/** Common practice, no source: one network camera, from a small one by day to one with strong infrared. */
export const UNKNOWN_DRAW: Draw = { kind: 'watts', watts: { least: watts(1.5), most: watts(15) } };

/** What a camera takes or a supply gives: `0,5 A`, `500 mA`, `6 W`, `4-6 W`. A bare number is amps. */
export function parseDraw(text: string): Result<Draw> {
  if (['W', 'kW'].some((unit) => isSameUnit(lastUnit(text), unit))) {
    const power = parseRange(text, POWER);
    return power.ok ? ok({ kind: 'watts', watts: power.value }) : power;
  }
  const current = parseRange(text, CURRENT);
  return current.ok ? ok({ kind: 'amps', amps: current.value }) : current;
}

function lastUnit(text: string): string {
  return typedUnit(/[\d.,]*\d\s*\p{L}+\s*$/u.exec(text)?.[0] ?? text);
}

/** Other cameras on the same supply, parted by semicolons: `10 m 0.4 A; 25-30 m 6 W`. Refuses what it cannot read. */
export function parseOthers(text: string): Result<readonly Other[]> {
  const others: Other[] = [];
  for (const part of text.split(/[;\n]/).filter((one) => one.trim() !== '')) {
    const [, length, taken] =
      /^(.*?\d\s*(?:m|met(?:re|er)s?|ft|feet|foot))[\s,:]+(\S.*)$/i.exec(part.trim()) ?? [];
    if (length === undefined || taken === undefined) {
      return problem({ id: 'measure.other-unclear', with: { text: quoted(part) } });
    }
    const metres = parseRange(length, LENGTH);
    if (!metres.ok) return metres;
    const draw = parseDraw(taken);
    if (!draw.ok) return draw;
    others.push({ metres: metres.value, draw: draw.value });
  }
  return ok(others);
}

/**
 * What a camera takes at night where only its day is known: as much, up to what strong infrared adds. Amps become
 * watts at the supply's volts.
 */
export function nightFrom(day: Draw, supply: Range<Volts>): Draw {
  const power =
    day.kind === 'watts'
      ? day.watts
      : { least: day.amps.least * supply.least, most: day.amps.most * supply.most };
  return {
    kind: 'watts',
    watts: { least: watts(power.least + NIGHT_WATTS.least), most: watts(power.most + NIGHT_WATTS.most) },
  };
}
