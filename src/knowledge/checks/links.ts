import { nearest } from '../../rulebase/did-you-mean.js';
import { headingIds } from '../heading-ids.js';
import { SOURCES } from '../headings.js';
import type { Block, Inline } from '../page.js';
import { linkedFile } from '../place.js';
import { blocksOf, partsOf } from '../plain.js';
import type { Checked, Found, Known } from './found.js';

/** Links and pictures that lead nowhere or outside, pictures without words, and HTML. */
export function linkFaults(checked: Checked, known: Known): readonly Found[] {
  const { blocks, sections } = checked.article;
  const sources = new Set(
    sections.filter(({ heading }) => heading === SOURCES).flatMap((section) => partsOf(section.blocks)),
  );
  return [
    ...blocksOf(blocks).flatMap(rawBlock),
    ...partsOf(blocks).flatMap((part) => [
      ...partFaults(part, checked, known),
      ...(sources.has(part) ? [] : addressFaults(part)),
    ]),
  ];
}

function rawBlock(block: Block): readonly Found[] {
  return block.kind === 'raw' ? [rawFault(block.text, block.line)] : [];
}

function rawFault(html: string, line: number): Found {
  const [first = ''] = html.trim().split('\n');
  return { line, says: { id: 'article.raw-html', with: { line, html: first } } };
}

function partFaults(part: Inline, checked: Checked, known: Known): readonly Found[] {
  const { line } = part;
  if (part.kind === 'raw') return [rawFault(part.text, line)];
  if (part.kind === 'link') return targetFaults(part.to, line, checked, known);
  if (part.kind !== 'picture') return [];
  const wordless: Found = { line, says: { id: 'article.picture-no-words', with: { line, from: part.from } } };
  return [...(part.shows === '' ? [wordless] : []), ...targetFaults(part.from, line, checked, known)];
}

const OUTSIDE = /^(?:[a-z][a-z0-9+.-]*:|\/|\\|www\.)/i;

function targetFaults(to: string, line: number, { file, article }: Checked, known: Known): readonly Found[] {
  if (OUTSIDE.test(to)) return [{ line, says: { id: 'article.link-outside', with: { line, to } } }];
  const target = linkedFile(file, to);
  const [, part] = to.split('#');
  if (target !== undefined && (known.files.has(target) || known.causes.has(target))) {
    const own =
      target !== file || part === undefined || [...headingIds(article.blocks).values()].includes(part);
    return own ? [] : [{ line, says: { id: 'article.link-no-heading', with: { line, to } } }];
  }
  const meant = target === undefined ? undefined : nearest(target, [...known.files, ...known.causes.keys()]);
  return meant === undefined
    ? [{ line, says: { id: 'article.link-nowhere', with: { line, to } } }]
    : [{ line, says: { id: 'article.link-nowhere-near', with: { line, to, nearest: meant } } }];
}

/** Addresses of outside pages in plain words; in the list of sources they may stand. */
function addressFaults(part: Inline): readonly Found[] {
  const [address] = part.kind === 'words' ? (/(?:https?:\/\/|www\.)\S+/i.exec(part.text) ?? []) : [];
  const { line } = part;
  return address === undefined
    ? []
    : [{ line, says: { id: 'article.address-outside', with: { line, address } } }];
}
