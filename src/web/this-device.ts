/** The systems that how-tos have parts for, as their headings name them. */
const SYSTEMS = ['Windows', 'macOS', 'Linux', 'Android', 'iOS'] as const;
export type System = (typeof SYSTEMS)[number];

/** The system this browser runs on, by what it says of itself; `undefined` where it says none that we know. */
export function systemOf(agent: string, touchPoints = 0): System | undefined {
  if (/iPhone|iPad|iPod/.test(agent)) return 'iOS';
  if (/Android/.test(agent)) return 'Android';
  if (/Windows/.test(agent)) return 'Windows';
  // A tablet asks for pages as a desk computer does; no desk computer of that kind has a touch screen.
  if (/Macintosh/.test(agent)) return touchPoints > 1 ? 'iOS' : 'macOS';
  return /Linux|CrOS/.test(agent) ? 'Linux' : undefined;
}

/**
 * Folds the parts of an article that are for one system each, and leaves those for this one open. The headings stay
 * where they are, as what is pressed to unfold.
 */
export function foldSystems(html: string, system: System | undefined): string {
  return SYSTEMS.reduce((now, one) => {
    const part = new RegExp(`<h3([^>]*)>${one}</h3>([\\s\\S]*?)(?=<h[1-3]|</article>)`);
    return now.replace(part, (_, attributes: string, body: string) => {
      const [, steps = body, after = ''] = /^([\s\S]*<\/ol>)([\s\S]*)$/.exec(body) ?? [];
      const open = system === undefined || one === system ? ' open' : '';
      return `<details${open}><summary><h3${attributes}>${one}</h3></summary>${steps}</details>${after}`;
    });
  }, html);
}
