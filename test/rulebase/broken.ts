import { assemble } from '../../src/rulebase/assemble.js';
import type { RuleFile } from '../../src/rulebase/check-shape.js';
import type { RuleFault } from '../../src/rulebase/fault.js';
import { readSchemas, SMALL_NAMES, smallFiles } from './small-rule-base.js';

const SCHEMAS = readSchemas();

/** A change to the small rule base: a value put at a pointer of a file, or taken away if there is none. */
export interface Change {
  readonly file: string;
  readonly at: string;
  readonly value?: unknown;
}

/** One thing broken, and where and how it must be reported: `grade file pointer message-id`. */
export interface Broken {
  readonly name: string;
  readonly changes: readonly Change[];
  readonly extra?: readonly RuleFile[];
  readonly faults: readonly string[];
}

export function changed(changes: readonly Change[], extra: readonly RuleFile[] = []): readonly RuleFile[] {
  const files = smallFiles();
  for (const change of changes) {
    const parts = change.at.split('/').slice(1);
    const last = parts.pop();
    let inside: unknown = files.find(({ file }) => file === change.file)?.json;
    for (const part of parts) inside = member(inside, part);
    if (last === undefined || typeof inside !== 'object' || inside === null)
      throw new Error(`no ${change.at}`);
    if ('value' in change) Reflect.set(inside, last, change.value);
    else if (Array.isArray(inside)) inside.splice(Number(last), 1);
    else Reflect.deleteProperty(inside, last);
  }
  return [...files, ...extra];
}

function member(inside: unknown, part: string): unknown {
  if (typeof inside !== 'object' || inside === null || !(part in inside))
    throw new Error(`no ${part} to change`);
  return Reflect.get(inside, part);
}

/** What the checks say of the small rule base after the change. */
export function faultsAfter({ changes, extra }: Pick<Broken, 'changes' | 'extra'>): readonly RuleFault[] {
  return assemble(changed(changes, extra), SCHEMAS, SMALL_NAMES).faults;
}

export function inShort({ grade, file, pointer, says }: RuleFault): string {
  return `${grade} ${file} ${pointer} ${says.id}`;
}
