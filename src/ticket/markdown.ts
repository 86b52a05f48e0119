/** Blocks with an empty line between them; empty ones are left out. */
export function blocks(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join('\n\n');
}

/** A heading of the second level and what belongs under it; nothing where nothing does. */
export function section(title: string, ...parts: readonly string[]): string {
  const body = blocks(...parts);
  return body === '' ? '' : blocks(`## ${title}`, body);
}

/** A heading of the third level and what belongs under it. */
export function subsection(title: string, ...parts: readonly string[]): string {
  const body = blocks(...parts);
  return body === '' ? '' : blocks(`### ${title}`, body);
}

/** A list; items may have lists of their own below them. */
export function bullets(items: readonly string[]): string {
  return items.map((item) => hanging('- ', item)).join('\n');
}

/** A numbered list; items may have lists of their own below them. */
export function numbered(items: readonly string[]): string {
  return items.map((item, place) => hanging(`${place + 1}. `, item)).join('\n');
}

/** A line and the list that belongs to it. */
export function withList(line: string, list: string): string {
  return list === '' ? line : `${line}\n${list}`;
}

/** A GFM table; nothing where it would have no rows. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return '';
  const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
}

function hanging(mark: string, item: string): string {
  return mark + item.replaceAll('\n', `\n${' '.repeat(mark.length)}`);
}
