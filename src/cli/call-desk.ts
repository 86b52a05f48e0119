import { homedir } from 'node:os';
import { InputFault, MachineFault } from '../files/faults.js';
import { builtArticles, readArticleText } from '../files/load-articles.js';
import { askOn, type Terminal } from './ask.js';
import { pastedText } from './prompts/pasted-text.js';
import type { Desk } from './talk.js';

/** A call's desk on a terminal: this process's clock, folders and output. */
export function callDesk(terminal: Terminal): Desk {
  return {
    terminal,
    ask: askOn(terminal),
    results: process.stdout,
    now: () => new Date().toISOString(),
    env: process.env,
    home: homedir(),
    read: articleReader(),
    pasted: () => pastedText(terminal),
    // Loaded when wanted: few calls read the computer they are held on.
    eyes: async () => (await import('./eyes-here.js')).eyesHere(),
  };
}

/** Reads the articles that the build brought along, each when it is asked for. */
function articleReader(): (file: string) => string | undefined {
  const folder = builtArticles(import.meta.url);
  return (file) => {
    try {
      return readArticleText(folder, file);
    } catch (fault) {
      if (!(fault instanceof InputFault || fault instanceof MachineFault)) throw fault;
      return undefined;
    }
  };
}
