import type { Screen } from '../call/screen.js';
import type { PathStage } from '../diagnosis/diagnosis.js';
import { say } from '../messages/say.js';
import { lines, NO_BREAK, type Paint } from './paint.js';

/** A step as it stands on the terminal, above its prompt. Nothing is told by colour alone. */
export function screenText(screen: Screen, paint: Paint, columns: number | undefined): string {
  const looked = screen.path.some(({ state }) => state !== 'unseen');
  return [
    '',
    ...(looked ? [paint('dim', pathText(screen.path, columns)), ''] : []),
    paint('bold', lines(screen.heading, columns)),
    ...block(say('cli.caution'), screen.cautions, (text) => paint('yellow', text), columns),
    ...block(say('cli.say'), screen.say, (text) => paint('cyan', text), columns),
    ...block(say('cli.sum'), screen.sums, (text) => text, columns),
    ...block(say('cli.find'), screen.help, (text) => text, columns),
    ...block(say('cli.why'), screen.why, (text) => paint('dim', text), columns),
    '',
  ].join('\n');
}

/** Label and text side by side, the text's lines under each other. */
function block(
  label: string,
  texts: readonly string[],
  style: (text: string) => string,
  columns: number | undefined,
): string[] {
  const indent = ' '.repeat(9);
  return texts.map((text, at) => {
    const body = lines(text, columns, indent).slice(indent.length);
    return `${(at === 0 ? label : '').padEnd(indent.length)}${style(body)}`;
  });
}

/** The picture path in two or three lines: a sign and a word for each stage. */
export function pathText(path: readonly PathStage[], columns: number | undefined): string {
  const stages = path.map(({ state, title }) =>
    say(`cli.path-${state}`, { stage: title }).replaceAll(' ', NO_BREAK),
  );
  return lines(stages.join('  '), columns);
}
