import type { Line } from '../parser.js';
import type { Lookup } from '../seen.js';
import { type LookupDraft, lookupDraft, lookupOf, plainName } from '../unix/lookup-words.js';
import type { Step } from '../unix/walk.js';
import { address4 } from '../unix/words.js';
import {
  type Complaint,
  complaintOf,
  isAddress,
  isAnswerName,
  isAnswerTitle,
  isKnownTitle,
  isOfServer,
  isRecord,
  isServerLabel,
  isSilence,
  labelled,
  type ServerBlock,
  serverBlock,
} from './nslookup-lines.js';
import { ADDRESS_LABELS, ALIAS_LABELS, NAME_LABELS } from './nslookup-words.js';

const FURTHER = /^\s{0,40}(\S{1,255})$/;
const INDENTED = /^\s{4,40}(\S{1,255})$/;

/** One lookup while its lines are read. */
export class NslookupRun {
  readonly #draft: LookupDraft;
  readonly #asked: string;
  #server = '';
  #alias = '';
  #hasServer = false;
  #hasAnswer = false;
  #isDefault = false;
  #isSilent = false;
  #isWithin: 'addresses' | 'aliases' | undefined;
  /** The index up to which lines are understood already. */
  #last = -1;

  constructor(line: number, asked: string) {
    this.#draft = lookupDraft(line);
    this.#asked = asked;
  }

  add(lines: readonly Line[], text: string, index: number): Step {
    if (index <= this.#last) return 'read';
    const within = this.#isWithin;
    this.#isWithin = undefined;
    if (isSilence(lines, index)) return this.#addSilence(index);
    const complaint = complaintOf(text, this.#server);
    if (complaint !== undefined) return this.#addComplaint(complaint);
    if (this.#draft.outcome !== undefined) return 'end';
    const block = this.#hasAnswer || this.#hasServer ? undefined : serverBlock(lines, index);
    if (block !== undefined) return this.#addServer(block);
    if (!this.#hasAnswer && (isKnownTitle(text) || (this.#hasServer && isAnswerTitle(text)))) return 'read';
    return this.#addAnswer(lines, text, index, within);
  }

  /** None where nothing was asked. */
  lookup(): Lookup | undefined {
    const draft = this.#draft;
    const name = this.#alias !== '' ? this.#alias : draft.name !== '' ? draft.name : plainName(this.#asked);
    const outcome =
      draft.outcome ?? (this.#hasAnswer ? 'answered' : this.#isSilent ? 'no-answer' : undefined);
    if (outcome === undefined && (this.#isDefault || name === '')) return undefined;
    return lookupOf({ ...draft, name, outcome });
  }

  #addSilence(index: number): Step {
    if (this.#draft.addresses.length > 0 || this.#draft.outcome !== undefined) return 'end';
    this.#isSilent = true;
    this.#last = index + 1;
    return 'read';
  }

  #addComplaint(complaint: Complaint): Step {
    // That the server has no name of its own is said before the server is named.
    if (!this.#hasServer && isOfServer(complaint)) return 'read';
    if (this.#draft.outcome !== undefined) return 'end';
    this.#draft.outcome = complaint.outcome;
    if (complaint.name !== '') this.#draft.name = complaint.name;
    return 'read';
  }

  #addServer(block: ServerBlock): Step {
    this.#hasServer = true;
    this.#server = block.name;
    this.#isDefault = block.isDefault;
    this.#draft.server = address4(block.address);
    this.#last = block.last;
    return 'read';
  }

  #addAnswer(
    lines: readonly Line[],
    text: string,
    index: number,
    within: 'addresses' | 'aliases' | undefined,
  ): Step {
    const field = labelled(text);
    if (field !== undefined && isServerLabel(field.label)) return 'end';
    if (field !== undefined && this.#hasAnswer && ADDRESS_LABELS.has(field.label) && isAddress(field.value))
      return this.#addAddress(field.value);
    if (field !== undefined && this.#hasAnswer && ALIAS_LABELS.has(field.label)) {
      this.#alias = plainName(field.value);
      this.#isWithin = 'aliases';
      return 'read';
    }
    if (field !== undefined && (isAnswerName(lines, index) || NAME_LABELS.has(field.label))) {
      if (this.#hasAnswer) return 'end';
      this.#hasAnswer = true;
      this.#draft.name = plainName(field.value);
      return 'read';
    }
    const further = FURTHER.exec(text)?.[1];
    if (within === 'addresses' && further !== undefined && isAddress(further))
      return this.#addAddress(further);
    if (within === 'aliases' && INDENTED.test(text)) {
      this.#isWithin = within;
      return 'read';
    }
    if (!this.#hasServer || !isRecord(text)) return 'end';
    if (this.#draft.name === '') this.#draft.name = plainName(/\S+/.exec(text)?.[0] ?? '');
    this.#hasAnswer = true;
    return 'read';
  }

  #addAddress(value: string): Step {
    const address = address4(value);
    if (address !== undefined) this.#draft.addresses.push(address);
    this.#isWithin = 'addresses';
    return 'read';
  }
}
