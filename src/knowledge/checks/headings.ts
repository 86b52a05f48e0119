import { nearest } from '../../rulebase/did-you-mean.js';
import { headingText, isHeading } from '../article.js';
import { CAUSE_HEADINGS, HOW_TO_HEADINGS, SOURCES } from '../headings.js';
import type { Heading } from '../page.js';
import type { Checked, Found } from './found.js';

/** The headings under the title: all there, none unknown, none twice, in order. */
export function headingFaults({ place, article }: Checked): readonly Found[] {
  const ofCause = place.kind === 'cause';
  const expected: readonly string[] = ofCause ? CAUSE_HEADINGS : HOW_TO_HEADINGS;
  const wanted: readonly string[] = ofCause ? CAUSE_HEADINGS : [SOURCES];
  const under = article.blocks.filter(isHeading).filter(({ level }) => level > 1);
  const standing = under.filter((heading) => heading.level === 2 && expected.includes(headingText(heading)));
  return [
    ...wanted
      .filter((one) => !standing.some((heading) => headingText(heading) === one))
      .map((heading): Found => missing(heading, expected, standing)),
    ...(ofCause ? under.filter((heading) => !standing.includes(heading)).map(unknown) : []),
    ...repeated(standing),
    ...misplaced(standing, ofCause ? standing : under.filter(({ level }) => level === 2), expected),
  ];
}

function missing(heading: string, expected: readonly string[], standing: readonly Heading[]): Found {
  const at = expected.indexOf(heading);
  const next = standing.find((one) => expected.indexOf(headingText(one)) > at);
  if (next === undefined) return { line: 1, says: { id: 'article.heading-missing', with: { heading } } };
  const before = headingText(next);
  return {
    line: next.line,
    says: { id: 'article.heading-missing-before', with: { line: next.line, heading, before } },
  };
}

function unknown(heading: Heading): Found {
  const { line } = heading;
  const is = headingText(heading);
  const meant = nearest(is, CAUSE_HEADINGS);
  if (meant !== undefined)
    return {
      line,
      says: { id: 'article.heading-unknown-near', with: { line, heading: is, nearest: meant } },
    };
  const all = CAUSE_HEADINGS.join(', ');
  return { line, says: { id: 'article.heading-unknown', with: { line, heading: is, all } } };
}

function repeated(standing: readonly Heading[]): readonly Found[] {
  return standing.flatMap((heading, at): Found[] => {
    const text = headingText(heading);
    const again = standing.slice(0, at).some((one) => headingText(one) === text);
    const { line } = heading;
    return again ? [{ line, says: { id: 'article.heading-twice', with: { line, heading: text } } }] : [];
  });
}

/** Headings that stand below one they belong above; free ones belong above all that are expected. */
function misplaced(
  standing: readonly Heading[],
  all: readonly Heading[],
  expected: readonly string[],
): readonly Found[] {
  const rank = (heading: Heading): number => expected.indexOf(headingText(heading));
  return all.flatMap((heading, at): Found[] => {
    const above = all.slice(0, at).find((one) => standing.includes(one) && rank(one) > rank(heading));
    if (above === undefined) return [];
    const { line } = heading;
    const filling = { line, heading: headingText(heading), before: headingText(above) };
    return [{ line, says: { id: 'article.heading-late', with: filling } }];
  });
}
