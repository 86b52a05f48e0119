import type { Sentence } from '../messages/say.js';
import type { RuleFile } from './check-shape.js';
import { error, type RuleFault } from './fault.js';
import { type JsonFault, jsonFault } from './json-place.js';
import { shown } from './shown.js';

/** One file of `rules/` as it stands on disk: its path inside the folder, and its text. */
export interface RuleText {
  readonly file: string;
  readonly text: string;
}

export interface Parsed {
  readonly files: readonly RuleFile[];
  readonly faults: readonly RuleFault[];
}

/** Reads the JSON of every file. What cannot be read becomes a fault with line and column, counted from 1. */
export function parseFiles(texts: readonly RuleText[]): Parsed {
  const files: RuleFile[] = [];
  const faults: RuleFault[] = [];
  for (const { file, text } of texts) {
    const fault = jsonFault(text);
    if (fault === undefined) files.push({ file, json: JSON.parse(text) });
    else faults.push(error(file, '', sentence(text, fault)));
  }
  return { files, faults };
}

function sentence(text: string, fault: JsonFault): Sentence {
  const before = text.slice(0, fault.at).split('\n');
  const place = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
  if (fault.what === 'too-deep') return { id: 'rules.too-deep', with: place };
  if (fault.what === 'name-twice')
    return { id: 'rules.name-twice', with: { ...place, name: shown(fault.name) } };
  if (fault.at >= text.length) return { id: 'rules.text-ends', with: place };
  return { id: 'rules.not-json', with: { ...place, found: shown(text[fault.at]) } };
}
