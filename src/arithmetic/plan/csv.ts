/** Rows as comma-separated values with CRLF line ends; a field with comma, quote or line end in quotes (RFC 4180). */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

function field(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
