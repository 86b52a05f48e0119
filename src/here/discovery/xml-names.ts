/** A name with its namespace, empty where it has none (Namespaces in XML 1.0, section 2.1). */
export interface XmlName {
  readonly namespace: string;
  readonly name: string;
}

/** The prefixes that one element declares, on top of those around it. */
export interface Prefixes {
  readonly own: ReadonlyMap<string, string>;
  readonly around: Prefixes | undefined;
}

export const NO_PREFIXES: Prefixes = {
  own: new Map([['xml', 'http://www.w3.org/XML/1998/namespace']]),
  around: undefined,
};

/** What a name such as `d:Types` stands for where these prefixes hold; undefined where its prefix is not declared. */
export function xmlName(written: string, prefixes: Prefixes): XmlName | undefined {
  const [prefix, name] = written.includes(':') ? written.split(':', 2) : ['', written];
  if (prefix === undefined || name === undefined || name === '') return undefined;
  const namespace = namespaceOf(prefix, prefixes) ?? '';
  return namespace === '' && prefix !== '' ? undefined : { namespace, name };
}

function namespaceOf(prefix: string, prefixes: Prefixes): string | undefined {
  // No deeper than the elements are.
  for (let at: Prefixes | undefined = prefixes; at !== undefined; at = at.around) {
    const found = at.own.get(prefix);
    if (found !== undefined) return found;
  }
  return undefined;
}
