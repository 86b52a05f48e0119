import { placeAfter, visitMinutes, wayMinutes } from '../../../src/steps/ways.js';
import { afterTry, afterValue, type ExactModel, massOf } from './exact-model.js';

/**
 * The fewest expected minutes until the picture is back by any policy whatever of asking (each question once),
 * trying (each remedy once) and sending someone, by exact dynamic programming over what is known, what was tried
 * and where the person is (Bellman 1957). Weights stay unnormalised: a state's minutes count by its chance.
 */
export function optimum({ priors, questions, remedies, manifest, here }: ExactModel): number {
  const jobs = [...questions, ...remedies].map(({ place }) => placeAfter(manifest, here, place));
  const places = [...new Set([here, ...jobs])];
  const visit = visitMinutes(manifest);
  /** By place: where a job there leaves the person, and the minutes it takes with the way. */
  const doneFrom = (jobs: readonly { readonly place: string; readonly minutes: number }[]) =>
    places.map((from) =>
      jobs.map((job) => ({
        place: places.indexOf(placeAfter(manifest, from, job.place)),
        minutes: job.minutes + wayMinutes(manifest, from, job.place),
      })),
    );
  const asked = doneFrom(questions);
  const tried = doneFrom(remedies);
  const scales: number[] = [];
  let answers = 1;
  for (const { values } of questions) {
    scales.push(answers);
    answers *= values.length + 1;
  }
  const triedScale = answers;
  const placeScale = answers * 2 ** remedies.length;
  const known = new Float64Array(placeScale * places.length).fill(-1);

  const fewest = (weights: readonly number[], told: number, done: number, place: number): number => {
    const mass = massOf(weights);
    if (mass === 0) return 0;
    const key = told + triedScale * done + placeScale * place;
    const before = known[key] ?? -1;
    if (before >= 0) return before;
    let best = mass * visit;
    remedies.forEach((remedy, at) => {
      const job = tried[place]?.[at];
      if (!job || done & (1 << at) || mass * job.minutes >= best) return;
      const after = fewest(afterTry(weights, remedy), told, done | (1 << at), job.place);
      best = Math.min(best, mass * job.minutes + after);
    });
    questions.forEach(({ rows }, at) => {
      const job = asked[place]?.[at];
      const scale = scales[at] ?? 1;
      if (!job || Math.floor(told / scale) % (rows.length + 1) !== 0) return;
      let minutes = mass * job.minutes;
      for (let value = 0; value < rows.length && minutes < best; value++)
        minutes += fewest(
          afterValue(weights, rows[value] ?? []),
          told + scale * (value + 1),
          done,
          job.place,
        );
      best = Math.min(best, minutes);
    });
    known[key] = best;
    return best;
  };
  return fewest(priors, 0, 0, places.indexOf(here)) / massOf(priors);
}
