import { parseAddressWithMask } from '../../values/address.js';
import { ok } from '../../values/result.js';
import { overlap } from '../overlap.js';
import { showBlock } from '../show-block.js';
import { needed, readGiven } from './read-given.js';
import type { Given, Topic } from './topic.js';

/** Whether two networks use the same addresses. */
export const OVERLAP: Topic = {
  id: 'overlap',
  title: 'reckon.overlap',
  inputs: [
    { id: 'first', ask: 'reckon.ask-first-range' },
    { id: 'second', ask: 'reckon.ask-second-range' },
  ],
  reckon,
};

const READS = { first: needed(parseAddressWithMask), second: needed(parseAddressWithMask) };

function reckon(given: Given): ReturnType<Topic['reckon']> {
  const read = readGiven(given, READS);
  if (!read.ok) return read;
  const { first, second } = read.value;
  const { value, lines } = overlap(first, second);
  return ok({ lines, data: { first: showBlock(first), second: showBlock(second), overlap: value } });
}
