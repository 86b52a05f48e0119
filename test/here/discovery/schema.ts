import type { XmlElement } from '../../../src/here/discovery/xml.js';

/** A child that a type of the schema has: how often at least and at most; `text` is the form of what stands in it. */
interface Part {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly text?: RegExp;
}

const ADDRESSING = 'http://schemas.xmlsoap.org/ws/2004/08/addressing';
const DISCOVERY = 'http://schemas.xmlsoap.org/ws/2005/04/discovery';

/** Lists of xs:QName and xs:anyURI. */
const QNAMES = /^\s*(?:[\w.-]+:)?[\w.-]+(?:\s+(?:[\w.-]+:)?[\w.-]+)*\s*$/;
const URIS = /^\s*[a-z][a-z0-9+.-]*:\S*(?:\s+[a-z][a-z0-9+.-]*:\S*)*\s*$/;
const URI = /^\s*[a-z][a-z0-9+.-]*:\S+\s*$/;
const UNSIGNED = /^\s*\d{1,10}\s*$/;

/**
 * The types of the schema of WS-Discovery, as sequences: looked up in the schema that System.ServiceModel.Discovery
 * builds for the draft of 2005 and for 1.1 (both alike), where each part is written beside its XSD. That MetadataVersion
 * is needed in a ProbeMatch, and the headers of both messages (sections 5.2 and 5.3), are from memory of the standard.
 */
const TYPES: Readonly<Record<'Probe' | 'ProbeMatches' | 'ProbeMatch', readonly Part[]>> = {
  Probe: [
    { name: `${DISCOVERY} Types`, least: 0, most: 1, text: QNAMES },
    { name: `${DISCOVERY} Scopes`, least: 0, most: 1, text: URIS },
  ],
  ProbeMatches: [{ name: `${DISCOVERY} ProbeMatch`, least: 0, most: Number.POSITIVE_INFINITY }],
  ProbeMatch: [
    { name: `${ADDRESSING} EndpointReference`, least: 1, most: 1 },
    { name: `${DISCOVERY} Types`, least: 0, most: 1, text: QNAMES },
    { name: `${DISCOVERY} Scopes`, least: 0, most: 1, text: URIS },
    { name: `${DISCOVERY} XAddrs`, least: 0, most: 1, text: URIS },
    { name: `${DISCOVERY} MetadataVersion`, least: 1, most: 1, text: UNSIGNED },
  ],
};

/** Headers may come in any order. */
const HEADERS: Readonly<Record<'Probe' | 'ProbeMatches', readonly Part[]>> = {
  Probe: [
    {
      name: `${ADDRESSING} Action`,
      least: 1,
      most: 1,
      text: /^http:\/\/schemas\.xmlsoap\.org\/ws\/2005\/04\/discovery\/Probe$/,
    },
    { name: `${ADDRESSING} MessageID`, least: 1, most: 1, text: URI },
    { name: `${ADDRESSING} ReplyTo`, least: 0, most: 1 },
    { name: `${ADDRESSING} To`, least: 1, most: 1, text: /^urn:schemas-xmlsoap-org:ws:2005:04:discovery$/ },
  ],
  ProbeMatches: [
    {
      name: `${ADDRESSING} Action`,
      least: 1,
      most: 1,
      text: /^http:\/\/schemas\.xmlsoap\.org\/ws\/2005\/04\/discovery\/ProbeMatches$/,
    },
    { name: `${ADDRESSING} MessageID`, least: 1, most: 1, text: URI },
    { name: `${ADDRESSING} RelatesTo`, least: 1, most: 1, text: URI },
    { name: `${ADDRESSING} To`, least: 1, most: 1, text: URI },
    { name: `${DISCOVERY} AppSequence`, least: 1, most: 1 },
  ],
};

/** What is wrong with a message by the rules of the standard; empty where nothing is. */
export function schemaFaults(envelope: XmlElement, kind: 'Probe' | 'ProbeMatches'): readonly string[] {
  const [header, body, ...more] = envelope.children;
  const [root, ...others] = body?.children ?? [];
  if (header === undefined || root === undefined || more.length + others.length > 0)
    return ['no SOAP message'];
  const soap = 'http://www.w3.org/2003/05/soap-envelope';
  const names = [envelope, header, body, root].map((element) => element && nameOf(element));
  const expected = [`${soap} Envelope`, `${soap} Header`, `${soap} Body`, `${DISCOVERY} ${kind}`];
  const sorted = [...header.children].sort((one, other) => orderOf(one, kind) - orderOf(other, kind));
  return [
    ...(names.join() === expected.join() ? [] : [`${names.join()} is not ${expected.join()}`]),
    ...sequenceFaults(sorted, HEADERS[kind]),
    ...sequenceFaults(root.children, TYPES[kind]),
    ...(kind === 'Probe'
      ? []
      : root.children.flatMap((match) => sequenceFaults(match.children, TYPES.ProbeMatch))),
  ];
}

function nameOf({ namespace, name }: XmlElement): string {
  return `${namespace} ${name}`;
}

function orderOf(element: XmlElement, kind: 'Probe' | 'ProbeMatches'): number {
  return HEADERS[kind].findIndex(({ name }) => name === nameOf(element));
}

function sequenceFaults(children: readonly XmlElement[], parts: readonly Part[]): readonly string[] {
  const faults: string[] = [];
  let at = 0;
  for (const { name, least, most, text } of parts) {
    let count = 0;
    for (let child = children[at]; child !== undefined && nameOf(child) === name; child = children[at]) {
      if (text !== undefined && !text.test(child.text)) faults.push(`${name} holds "${child.text}"`);
      count += 1;
      at += 1;
    }
    if (count < least || count > most) faults.push(`${name} stands there ${count} times`);
  }
  // xs:any with ##other: what comes behind is of another namespace.
  for (const child of children.slice(at)) {
    if ([ADDRESSING, DISCOVERY, ''].includes(child.namespace))
      faults.push(`${nameOf(child)} is out of place`);
  }
  return faults;
}
