import { byText } from './canonical.js';
import { KINDS, type RuleBase, type Source } from './records.js';

/** Whether somebody opened the section and found it to say so, found it restated, or wrote it down as remembered. */
export type Standing = 'opened' | 'restated' | 'from-memory';

/** A published source, and the records that rest on it. */
export interface Published {
  readonly title: string;
  readonly section: string;
  readonly standing: Standing;
  /** As `causes/clock-off`, sorted. */
  readonly records: readonly string[];
}

export interface Sources {
  readonly published: readonly Published[];
  /** Records that rest on the trade's common practice, and on judgement, and on nothing published. */
  readonly practice: number;
  readonly judged: number;
}

/** What a rule base rests on; published sources sorted by title and section. */
export function sourcesOf(rules: RuleBase): Sources {
  const all: { readonly name: string; readonly source: Source }[] = KINDS.flatMap((kind) =>
    rules[kind].map(({ id, source }) => ({ name: `${kind}/${id}`, source })),
  );
  const ofRules = rules.findings.flatMap(({ id, rules: list }) =>
    list.flatMap(({ source }) => (source === undefined ? [] : [{ name: `findings/${id}`, source }])),
  );
  const published = new Map<string, Published>();
  for (const { name, source } of [...all, ...ofRules]) {
    if (typeof source === 'string') continue;
    const key = `${source.title}\n${source.section}`;
    const records = [...new Set([...(published.get(key)?.records ?? []), name])].sort(byText);
    const { title, section, opened } = source;
    published.set(key, { title, section, standing: opened ? STANDINGS[opened] : 'from-memory', records });
  }
  const count = (text: Source) => all.filter(({ source }) => source === text).length;
  return {
    published: [...published].sort(([a], [b]) => byText(a, b)).map(([, one]) => one),
    practice: count('common practice, no source'),
    judged: count('judged'),
  };
}

const STANDINGS = { text: 'opened', restatement: 'restated' } as const;
