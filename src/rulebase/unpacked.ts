import { fileOf, MANIFEST } from './layout.js';
import type { RuleText } from './parse-files.js';
import { KINDS } from './records.js';

/** The files that a packed rule base was made of, so that it is checked like a folder. What fits nowhere becomes a manifest that says so. */
export function unpacked(text: string): readonly RuleText[] {
  const json = objectIn(text);
  if (json === undefined) return [{ file: MANIFEST, text }];
  const { manifest = {} } = json;
  const records = KINDS.flatMap((kind) => {
    const list = json[kind];
    return (Array.isArray(list) ? list : []).map((record: { id?: unknown; stage?: unknown }) => ({
      file: fileOf(kind, String(record?.id), String(record?.stage)),
      text: JSON.stringify(record),
    }));
  });
  return [{ file: MANIFEST, text: JSON.stringify(manifest) }, ...records];
}

function objectIn(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const json: unknown = JSON.parse(text);
    return typeof json === 'object' && json !== null && !Array.isArray(json)
      ? (json as Readonly<Record<string, unknown>>)
      : undefined;
  } catch {
    return undefined;
  }
}
