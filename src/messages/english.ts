import { ANSWER_WORDS } from './english/answers.js';
import { CALL_WORDS } from './english/call.js';
import { CLI_WORDS } from './english/cli.js';
import { DIAGNOSIS_WORDS } from './english/diagnosis.js';
import { FILES_WORDS } from './english/files.js';
import { RULES_WORDS } from './english/rules.js';
import { SUBNET_WORDS } from './english/subnet.js';
import { TICKET_WORDS } from './english/ticket.js';
import { TYPED_WORDS } from './english/typed.js';

/** Every sentence of ours, by id. A test holds that no id stands in two of the lists. */
export const ENGLISH = {
  ...TYPED_WORDS,
  ...SUBNET_WORDS,
  ...ANSWER_WORDS,
  ...CALL_WORDS,
  ...CLI_WORDS,
  ...DIAGNOSIS_WORDS,
  ...FILES_WORDS,
  ...RULES_WORDS,
  ...TICKET_WORDS,
} as const;
