import type { Draft } from '../draft.js';
import { error, type RuleFault } from '../fault.js';
import type { Known } from '../known.js';
import { pointer } from '../pointer.js';
import { mustExist } from './exists.js';
import { repeated } from './repeated.js';

/** Places that are no movement: nobody walks to or from them. */
const NOWHERE: ReadonlySet<string> = new Set(['anywhere', 'desk']);

/** Names of the manifest are unique, and there is a way between any two places somebody can be at. */
export function checkManifest(draft: Draft, known: Known): readonly RuleFault[] {
  const { file, record } = draft.manifest;
  const { stages, places, kit, ways } = record;
  const lists = { stages, places, kit };
  const between = places
    .filter(({ id, within }) => !NOWHERE.has(id) && within === undefined)
    .map(({ id }) => id);
  const within = new Set(places.filter((place) => place.within !== undefined).map(({ id }) => id));
  const given = new Set(ways.map(({ from, to }) => `${from} ${to}`));
  const missing = between.flatMap((from) =>
    between.filter((to) => to !== from && !given.has(`${from} ${to}`)).map((to) => ({ from, to })),
  );
  return [
    ...Object.entries(lists).flatMap(([name, list]) => [
      ...repeated(list, ({ id }) => id).map((i) =>
        error(file, pointer(name, i, 'id'), { id: 'rules.twice-in-list' }),
      ),
      ...repeated(list, ({ title }) => title).map((i) =>
        error(file, pointer(name, i, 'title'), { id: 'rules.twice-in-list' }),
      ),
    ]),
    ...places.flatMap(({ within = [] }, i) =>
      within.flatMap((id, j) =>
        mustExist(file, pointer('places', i, 'within', j), id, new Set(between), 'rules.no-such-place'),
      ),
    ),
    ...ways.flatMap(({ from, to }, i) => [
      ...mustExist(file, pointer('ways', i, 'from'), from, known.places, 'rules.no-such-place'),
      ...mustExist(file, pointer('ways', i, 'to'), to, known.places, 'rules.no-such-place'),
      ...(from === to
        ? [error(file, pointer('ways', i), { id: 'rules.way-to-itself', with: { place: from } })]
        : []),
      ...[from, to]
        .filter((place) => within.has(place))
        .map((place) => error(file, pointer('ways', i), { id: 'rules.way-of-within', with: { place } })),
    ]),
    ...repeated(ways, ({ from, to }) => `${from} ${to}`).map((i) =>
      error(file, pointer('ways', i), { id: 'rules.twice-in-list' }),
    ),
    ...silenceFaults(draft, known),
    ...missing.map((way) => error(file, '/ways', { id: 'rules.way-missing', with: way })),
  ];
}

function silenceFaults({ manifest: { file, record } }: Draft, { findings }: Known): readonly RuleFault[] {
  const { silence } = record;
  if (silence === undefined) return [];
  const at = pointer('silence', 'finding');
  const finding = findings.get(silence.finding);
  if (finding === undefined) return mustExist(file, at, silence.finding, findings, 'rules.no-such-finding');
  const values = new Set(Object.keys(finding.values));
  return mustExist(file, pointer('silence', 'value'), silence.value, values, 'rules.no-such-value');
}
