import { printable } from '../messages/printable.js';
import { inWords, type Sentence, say } from '../messages/say.js';
import type { RuleFault } from '../rulebase/fault.js';

/** A fault of a file on one line, fit for a terminal whatever stands in the file. */
export function faultLine(fault: Pick<RuleFault, 'file' | 'pointer'> & { readonly says: Sentence }): string {
  const { file, pointer } = fault;
  const says = printable(inWords(fault.says), LONGEST);
  const at = { file: printable(file), pointer: printable(pointer), says };
  return pointer === '' ? say('cli.at-file', at) : say('cli.at', at);
}

/** The same, with a word that tells a warning from an error. */
export function gradedLine(fault: RuleFault): string {
  return say(`cli.grade.${fault.grade}`, { fault: faultLine(fault) });
}

const LONGEST = 1000;
