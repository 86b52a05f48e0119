import type { CheckedRules, KnowledgeFile } from '../../src/knowledge/check-articles.js';
import type { Cause, Question } from '../../src/rulebase/records.js';

/** An article with nothing wrong in it. */
export const LEAD = `# Lead out

## What happens

The short lead has come out. The picture is gone.

![A lead half out of its socket](../../pictures/lead.svg)

## How to be sure

The light beside the socket is dark.

## Mend it by phone

1. Say:

   > "Press the plug in until it clicks."

2. Wait a minute.

## Mend it on site

Take another lead. See [Put a plug on](../../how-to/plug.md).

## How to know it worked

The light is on. So is the picture.

## Often confused with

- [Supply off](../power/supply-off.md): there nothing is lit.

## Cautions

None beyond the usual.

## Sources

- A Handbook of Leads, section 4, https://leads.example
- Common practice, no source.
`;

export const SUPPLY = LEAD.replace('# Lead out', '# Supply off').replace(
  '[Supply off](../power/supply-off.md)',
  '[Lead out](../link/lead-out.md)',
);

export const PLUG = `# Put a plug on

1. Strip the end.
2. Press the plug on. An address to type is \`http://10.77.5.10\`.

## By system

### Round cable

Take the round plug.

## Sources

Common practice, no source.
`;

export const FILES: readonly KnowledgeFile[] = [
  { file: 'causes/link/lead-out.md', text: LEAD },
  { file: 'causes/power/supply-off.md', text: SUPPLY },
  { file: 'how-to/plug.md', text: PLUG },
  { file: 'pictures/lead.svg', text: '' },
];

function cause(id: string, stage: string, title: string): Cause {
  return { id, stage, title, source: 'judged', prior: 1, verdict: title, signs: {}, alsoExplainedBy: [] };
}

/** A question that names how-tos. */
export function question(id: string, howTo?: unknown): Question {
  const asked: Question = {
    ...{ id, title: id, source: 'judged', stage: 'link', prompt: 'Is it lit?', help: 'Look at it.' },
    ...{ answer: { type: 'yes-no' }, minutes: 1, place: 'computer', who: 'anyone' },
  };
  return howTo === undefined ? asked : Object.assign(asked, { howTo });
}

export const RULES: CheckedRules = {
  causes: [cause('lead-out', 'link', 'Lead out'), cause('supply-off', 'power', 'Supply off')],
  questions: [question('lit')],
};

/** The files with a piece of one of them written otherwise; throws where the piece stands nowhere. */
export function planted(file: string, was: string, now: string): readonly KnowledgeFile[] {
  return FILES.map((one) => {
    if (one.file !== file) return one;
    if (!one.text.includes(was)) throw new Error(`${file} has no "${was}"`);
    return { file, text: one.text.replace(was, () => now) };
  });
}
