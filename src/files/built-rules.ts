import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { printable } from '../messages/printable.js';
import { digestOfText } from '../rulebase/canonical.js';
import type { RuleBase } from '../rulebase/records.js';
import { faultOf, InputFault } from './faults.js';
import { MEBIBYTE, readLimited, textOf } from './read-limited.js';

/** The rule base that the build packed, and how to prove that it is still what was packed. */
export interface BuiltRules {
  readonly ruleBase: RuleBase;
  /** SHA-256 in hex, as the build wrote it down. */
  readonly digest: string;
  /** Sums the file up, once; later calls give the same promise. Rejects with an InputFault where a byte differs. */
  readonly verify: () => Promise<void>;
}

const LARGEST = 64 * MEBIBYTE;

/**
 * Loads `rules.json` and `rules.digest`, which stand beside the bundle whose `import.meta.url` is given, or one
 * folder above it where that is a chunk. Start-up does not wait for the digest: `verify` proves it when asked.
 * Throws an InputFault that says to install again where a file is missing or no JSON.
 */
export function loadBuiltRules(bundle: string): BuiltRules {
  const rules = builtFile(bundle, 'rules.json');
  const text = read(rules);
  const digest = read(builtFile(bundle, 'rules.digest')).trim();
  let proof: Promise<void> | undefined;
  return {
    ruleBase: parse(text, rules),
    digest,
    verify: () => {
      proof ??= prove(text, digest, rules);
      return proof;
    },
  };
}

function builtFile(bundle: string, name: string): string {
  const places = ['./', '../'].map((folder) => fileURLToPath(new URL(folder + name, bundle)));
  return places.find((place) => existsSync(place)) ?? places[0] ?? name;
}

function read(path: string): string {
  try {
    return textOf(readLimited(path, LARGEST), path);
  } catch (error) {
    const fault = faultOf(error, path);
    throw fault instanceof InputFault ? damaged(path, fault) : fault;
  }
}

function parse(text: string, path: string): RuleBase {
  try {
    return JSON.parse(text) as RuleBase;
  } catch (error) {
    throw damaged(path, error);
  }
}

async function prove(text: string, digest: string, path: string): Promise<void> {
  if ((await digestOfText(text)) !== digest) throw damaged(path);
}

function damaged(path: string, cause?: unknown): InputFault {
  return new InputFault({ id: 'files.rules-damaged', with: { path: printable(path) } }, cause);
}
