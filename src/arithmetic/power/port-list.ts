import { typedUnit } from '../../values/quantity.js';
import { ok, problem, type Result } from '../../values/result.js';
import { quoted, tidy } from '../../values/tidy.js';
import { POWER } from '../../values/units/dimension.js';
import { parseRange } from '../../values/units/parse-range.js';
import type { Watts } from '../../values/units/physical.js';
import type { Range } from '../../values/units/range.js';
import { isSameUnit } from '../../values/units.js';
import { saysUnknown } from '../../values/unknown-words.js';
import { type PoeClass, poeClass } from './poe-classes.js';

/** Which ports a switch keeps longest. A port of which nothing was said is low, as switches come. */
export type Priority = 'critical' | 'high' | 'low';

/** What hangs on one port, as far as it is known. */
export interface PortUse {
  readonly port: number;
  readonly poeClass?: PoeClass;
  /** The reading of the switch's page; for a camera not yet plugged in, the watts on its label. */
  readonly watts?: Range<Watts>;
  readonly priority: Priority;
}

const CLASS = /\b(?:class|cl|c) ?([0-8])\b/i;
const PRIORITY = /\b(critical|high|low)\b(?: priority)?/i;
const PORT = /^(?:port )?#?(\d{1,3})\b(?!\s*(?:[.,]\d|m?w|k?w|watts?|[-–]))[:=]?/i;

/**
 * The ports of a switch, parted by semicolons, line ends or a comma and a space: `1 class 3 6.4 W; 2 class 4 high`.
 * Class, watts and priority may be left out or `?`. Refuses a port named twice and what it cannot read.
 */
export function parsePorts(text: string): Result<readonly PortUse[]> {
  const parts = text.split(/[;\n]|,\s+/).filter((part) => part.trim() !== '');
  const ports: PortUse[] = [];
  for (const part of parts) {
    const parsed = parsePort(part);
    if (!parsed.ok) return parsed;
    if (parsed.value.port === 0) return problem({ id: 'measure.port-number', with: { text: quoted(part) } });
    if (ports.some(({ port }) => port === parsed.value.port)) {
      return problem({ id: 'measure.port-twice', with: { port: parsed.value.port } });
    }
    ports.push(parsed.value);
  }
  return ports.length === 0 ? problem({ id: 'typed.empty' }) : ok(ports);
}

/** One port or the camera that is to come; port 0 where none was named. */
export function parsePort(text: string): Result<PortUse> {
  const tidied = tidy(text);
  if (!tidied.ok) return tidied;
  const port = Number(PORT.exec(tidied.value)?.[1] ?? 0);
  const afterPort = tidied.value.replace(PORT, '').trim();
  const classNumber = CLASS.exec(afterPort)?.[1];
  const priority = PRIORITY.exec(afterPort)?.[1]?.toLowerCase() ?? 'low';
  const power = afterPort.replace(CLASS, ' ').replace(PRIORITY, ' ').trim();
  const use = {
    port,
    priority: priority as Priority,
    ...(classNumber === undefined ? {} : { poeClass: poeClass(Number(classNumber)) }),
  };
  if (power === '' || saysUnknown(power)) return ok(use);
  // A bare number could be a class as well as watts.
  if (!isSameUnit(typedUnit(lastNumber(power)), 'W')) {
    return problem({ id: 'measure.port-unclear', with: { text: quoted(text) } });
  }
  const watts = parseRange(power, POWER);
  return watts.ok ? ok({ ...use, watts: watts.value }) : watts;
}

function lastNumber(text: string): string {
  return /\d[\d.,]*\s*\p{L}+$/u.exec(text)?.[0] ?? '';
}
