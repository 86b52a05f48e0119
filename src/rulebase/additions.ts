import { error, type RuleFault } from './fault.js';
import { filePlace, MANIFEST } from './layout.js';
import type { RuleText } from './parse-files.js';

/** The file that stands in a folder of additions in place of a manifest. */
export const ADDITIONS = 'additions.json';

export interface Merged {
  readonly texts: readonly RuleText[];
  readonly faults: readonly RuleFault[];
}

/**
 * A rule base with a help desk's own records: additions only, and what `additions.json` names under `replaces`,
 * as `causes/cable-run`. The version tells that something was added (SemVer 2.0.0, item 10: build metadata).
 */
export function withAdditions(base: readonly RuleText[], added: readonly RuleText[]): Merged {
  const head = added.find(({ file }) => file === ADDITIONS);
  const read = head && headOf(head.text);
  if (!read) return { texts: base, faults: [error(ADDITIONS, '', { id: 'additions.no-head' })] };
  const own = added.filter(({ file }) => file !== ADDITIONS);
  const records = new Set(base.map(nameOf));
  const replaced = new Set(read.replaces);
  const faults = [
    ...own
      .filter(({ file }) => file === MANIFEST)
      .map(({ file }) => error(file, '', { id: 'additions.manifest' })),
    ...own
      .filter((one) => records.has(nameOf(one)) && !replaced.has(nameOf(one)))
      .map((one) => error(one.file, '', { id: 'additions.there-already', with: { name: nameOf(one) } })),
    ...read.replaces
      .filter((name) => !records.has(name) || !own.some((one) => nameOf(one) === name))
      .map((name) => error(ADDITIONS, '/replaces', { id: 'additions.nothing-to-replace', with: { name } })),
  ];
  const kept = base.filter((one) => !own.some((other) => nameOf(other) === nameOf(one)));
  return { texts: [...kept.map((one) => marked(one, read.version)), ...own], faults };
}

interface Head {
  readonly version: string;
  readonly replaces: readonly string[];
}

function headOf(text: string): Head | undefined {
  try {
    const json: unknown = JSON.parse(text);
    if (typeof json !== 'object' || json === null) return undefined;
    const { version, replaces = [] } = json as { version?: unknown; replaces?: unknown };
    const isList = Array.isArray(replaces) && replaces.every((one) => typeof one === 'string');
    const isVersion = typeof version === 'string' && /^[0-9A-Za-z-]+(\.[0-9A-Za-z-]+)*$/.test(version);
    return isVersion && isList ? { version, replaces } : undefined;
  } catch {
    return undefined;
  }
}

/** `causes/link/cable-run.json` is `causes/cable-run`, wherever it stands. */
function nameOf({ file }: RuleText): string {
  const place = filePlace(file);
  return place === undefined ? file : `${place.kind}/${place.id}`;
}

function marked(one: RuleText, version: string): RuleText {
  if (one.file !== MANIFEST) return one;
  return { ...one, text: one.text.replace(/("version"\s*:\s*"[^"+]*)"/, `$1+${version}"`) };
}
