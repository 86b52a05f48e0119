import { say } from '../../messages/say.js';
import { ok, problem, type Result } from '../../values/result.js';
import { quoted, tidy } from '../../values/tidy.js';

/** More than this nobody hangs up in a day; a list that long is a slip (judged). */
const MOST = 200;

/** A number of cameras from 1 to 200, or their names with commas or line ends between; each name once. */
export function parseCameras(text: string): Result<readonly string[]> {
  const names: string[] = [];
  for (const piece of text.split(/[,\uff0c\n]/, MOST + 1)) {
    const tidied = tidy(piece);
    if (tidied.ok) names.push(tidied.value);
    else if (tidied.problem.id !== 'typed.empty') return tidied;
  }
  const [only = '', second] = names;
  const count = second === undefined ? /^(\d+)(?: ?cameras?)?$/i.exec(only)?.[1] : undefined;
  const total = count === undefined ? names.length : Number(count);
  if (total < 1 || total > MOST) {
    return problem({ id: 'plan.cameras-wrong', with: { text: quoted(text), most: MOST } });
  }
  if (count !== undefined) {
    return ok(Array.from({ length: total }, (_, at) => say('plan.camera', { number: at + 1 })));
  }
  const folded = names.map((name) => name.toLowerCase());
  const twice = names.find((_, at) => folded.indexOf(folded[at] ?? '') < at);
  return twice === undefined ? ok(names) : problem({ id: 'plan.name-twice', with: { name: quoted(twice) } });
}
