/** Bracketed paste, as terminals have agreed on it: what is pasted comes between two marks (xterm control sequences). */
export const MARKS_ON = '\u001b[?2004h';
export const MARKS_OFF = '\u001b[?2004l';
export const BEGINS = '\u001b[200~';
export const ENDS = '\u001b[201~';
