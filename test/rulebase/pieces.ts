/** Pieces of records to break the small rule base with. */
export const test = (fact: string, operator: string, value: unknown) => ({
  all: [{ fact, operator, value }],
});
export const asked = (id: string, answer: object) => ({
  file: `questions/power/${id}.json`,
  json: {
    id,
    title: id,
    source: 'judged',
    stage: 'power',
    prompt: 'How much?',
    help: 'Look at the label.',
    answer,
    minutes: 1,
    place: 'site',
    who: 'anyone',
  },
});
export const METRES = asked('metres', { type: 'number', unit: 'm', min: 0, max: 100 });
export const SOUNDS = asked('sounds', {
  type: 'several',
  choices: [
    { id: 'hum', title: 'A hum' },
    { id: 'click', title: 'A click' },
  ],
});
/** A choice that says where the person is, or ends the call. */
export const MOVES = {
  type: 'choice',
  choices: [
    { id: 'near', title: 'Near', place: 'site' },
    { id: 'far', title: 'Far', ends: 'out-of-scope' },
  ],
} as const;
const THINGS = asked('things', {
  type: 'several',
  choices: [
    { id: 'patch-lead', title: 'A lead' },
    { id: 'ladder', title: 'A ladder' },
    { id: 'none', title: 'None' },
  ],
});
export const KIT = { ...THINGS, json: { ...THINGS.json, part: 'kit' } };
