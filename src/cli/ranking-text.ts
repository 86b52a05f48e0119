import { type Call, diagnosisOf } from '../call/call.js';
import { percent } from '../call/why-lines.js';
import { say } from '../messages/say.js';
import { lines, type Paint } from './paint.js';

const REASONS = 3;

/** The causes as they stand, each with its largest reasons for and against. */
export function rankingText(call: Call, paint: Paint, columns: number | undefined): string {
  const { ranked } = diagnosisOf(call);
  const causes = ranked.flatMap(({ title, probability, reasons }) => [
    lines(say('cli.ranking-line', { probability: percent(probability).padStart(5), title }), columns),
    ...reasons
      .filter(({ repeats }) => repeats === undefined)
      .slice(0, REASONS)
      .map(({ title: finding, shows, decibans }) => {
        const db = (decibans > 0 ? `+${decibans.toFixed(1)}` : decibans.toFixed(1)).padStart(6);
        return paint(
          'dim',
          lines(say('cli.ranking-reason', { decibans: db, title: finding, shows }), columns, '     '),
        );
      }),
  ]);
  return [
    paint('bold', say('cli.ranking')),
    ...causes,
    paint('dim', lines(say('cli.ranking-note'), columns)),
  ].join('\n');
}
