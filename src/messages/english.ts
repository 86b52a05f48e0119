import { ADDRESS6_WORDS } from './english/address6.js';
import { AMOUNT_WORDS } from './english/amounts.js';
import { ANSWER_WORDS } from './english/answers.js';
import { ARTICLE_WORDS } from './english/article.js';
import { BANDWIDTH_WORDS } from './english/bandwidth.js';
import { CALL_WORDS } from './english/call.js';
import { CLI_WORDS } from './english/cli.js';
import { CLOCK_WORDS } from './english/clock.js';
import { DIAGNOSIS_WORDS } from './english/diagnosis.js';
import { FILES_WORDS } from './english/files.js';
import { HAND_OVER_WORDS } from './english/hand-over.js';
import { HELP_WORDS } from './english/help.js';
import { HERE_WORDS } from './english/here.js';
import { LOSS_WORDS } from './english/loss.js';
import { NAT_WORDS } from './english/nat.js';
import { OVERLAP_WORDS } from './english/overlap.js';
import { PAGE_WORDS } from './english/page.js';
import { PASTE_WORDS } from './english/paste.js';
import { PICTURE_WORDS } from './english/pictures.js';
import { PLAN_WORDS } from './english/plan.js';
import { POWER_WORDS } from './english/power.js';
import { PROPOSAL_WORDS } from './english/proposals.js';
import { RECKON_WORDS } from './english/reckon.js';
import { REVIEW_WORDS } from './english/review.js';
import { RULES_WORDS } from './english/rules.js';
import { STORAGE_WORDS } from './english/storage.js';
import { SUBNET_WORDS } from './english/subnet.js';
import { TICKET_WORDS } from './english/ticket.js';
import { TYPED_WORDS } from './english/typed.js';
import { WALK_WORDS } from './english/walk.js';

/** Every sentence of ours, by id. A test holds that no id stands in two of the lists. */
export const ENGLISH = {
  ...TYPED_WORDS,
  ...SUBNET_WORDS,
  ...ANSWER_WORDS,
  ...CALL_WORDS,
  ...CLI_WORDS,
  ...DIAGNOSIS_WORDS,
  ...FILES_WORDS,
  ...HAND_OVER_WORDS,
  ...HELP_WORDS,
  ...HERE_WORDS,
  ...PAGE_WORDS,
  ...PASTE_WORDS,
  ...PICTURE_WORDS,
  ...PLAN_WORDS,
  ...POWER_WORDS,
  ...REVIEW_WORDS,
  ...RULES_WORDS,
  ...TICKET_WORDS,
  ...ADDRESS6_WORDS,
  ...OVERLAP_WORDS,
  ...PROPOSAL_WORDS,
  ...RECKON_WORDS,
  ...WALK_WORDS,
  ...AMOUNT_WORDS,
  ...ARTICLE_WORDS,
  ...BANDWIDTH_WORDS,
  ...CLOCK_WORDS,
  ...LOSS_WORDS,
  ...NAT_WORDS,
  ...STORAGE_WORDS,
} as const;
