/** `C:\>`, `PS C:\Users\name> `; on a share; with the sign that Japanese and Korean consoles show for a backslash. */
const PROMPT = /^ {0,4}(?:PS )?(?:[A-Za-z]:[\\¥₩]|\\\\[\w.$-]{1,80}\\)[^<>|"*?]{0,200}>/;
const BARE_POWERSHELL = /^ {0,4}PS>/;
/** What a console says of itself when it opens. */
const BANNER =
  /^(?:Microsoft Windows(?: XP)? \[\S{1,20} [\d.]{3,24}\]|Windows PowerShell|(?:\(c\)|©|Copyright(?: \(c\)| ©)) .{0,30}Microsoft Corp.{0,80})$/i;
const NSLOOKUP = /> ?nslookup(?:\.exe)? (?:-\S{1,40} ){0,4}([^\s-]\S{0,254})/i;

/** Whether a line is the prompt of a Windows console, with or without a command behind it, or the console's banner. */
export function isWindowsPrompt(text: string): boolean {
  if (BANNER.test(text)) return true;
  return text.includes('>') && (PROMPT.test(text) || BARE_POWERSHELL.test(text));
}

/** The name that was asked for behind a prompt. */
export function nameAsked(text: string): string | undefined {
  return isWindowsPrompt(text) ? NSLOOKUP.exec(text)?.[1] : undefined;
}
