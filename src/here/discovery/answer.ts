import { printable } from '../../files/printable.js';
import { type Address, isBlank, parseAddress } from '../../values/address.js';
import { ADDRESSING, DISCOVERY, SOAP } from './namespaces.js';
import { readXml, type XmlElement } from './xml.js';
import { type XmlName, xmlName } from './xml-names.js';

/** A device that answered a probe, by its own words. */
export interface Found {
  /** The name it keeps for ever, mostly `urn:uuid:...`. */
  readonly endpoint: string;
  /** The hosts of its XAddrs that are IPv4 addresses, each once. */
  readonly addresses: readonly Address[];
  readonly types: readonly XmlName[];
  /** What stands behind onvif://www.onvif.org/name/ in its scopes, fit for a terminal. */
  readonly names: readonly string[];
  /** The id of the probe that it answers. */
  readonly relatesTo: string;
}

/**
 * The devices of a ProbeMatches message (WS-Discovery of April 2005, section 5.3, and 1.1); none where it is another
 * message, or none at all. Never throws.
 */
export function parseAnswer(text: string): readonly Found[] {
  const envelope = readXml(text);
  if (envelope === undefined || !isNamed(envelope, [SOAP], 'Envelope')) return [];
  const header = childOf(envelope, [SOAP], 'Header');
  const action = wordsOf(childOf(header, ADDRESSING, 'Action'))[0] ?? '';
  if (!DISCOVERY.some((namespace) => action === `${namespace}/ProbeMatches`)) return [];
  const relatesTo = wordsOf(childOf(header, ADDRESSING, 'RelatesTo'))[0];
  if (relatesTo === undefined) return [];
  const matches = childOf(childOf(envelope, [SOAP], 'Body'), DISCOVERY, 'ProbeMatches')?.children ?? [];
  return matches
    .filter((match) => isNamed(match, DISCOVERY, 'ProbeMatch'))
    .flatMap((match) => foundIn(match, relatesTo));
}

/** Whether both ids name the same UUID; some devices leave `urn:` away, or write it large. */
export function isSameMessage(one: string, other: string): boolean {
  return bare(one) === bare(other);
}

function bare(id: string): string {
  return id.toLowerCase().replace(/^(?:urn:)?(?:uuid:)?/, '');
}

function foundIn(match: XmlElement, relatesTo: string): readonly Found[] {
  const reference = childOf(match, ADDRESSING, 'EndpointReference');
  const endpoint = wordsOf(childOf(reference, ADDRESSING, 'Address'))[0];
  if (endpoint === undefined) return [];
  const types = childOf(match, DISCOVERY, 'Types');
  return [
    {
      endpoint: printable(endpoint),
      addresses: addressesIn(wordsOf(childOf(match, DISCOVERY, 'XAddrs'))),
      types: wordsOf(types).flatMap((word) => (types && xmlName(word, types.prefixes)) ?? []),
      names: wordsOf(childOf(match, DISCOVERY, 'Scopes')).flatMap(nameIn),
      relatesTo,
    },
  ];
}

const XADDR = /^https?:\/\/([0-9.]{7,15})(?::\d{1,5})?(?:[/?#]|$)/i;

function addressesIn(xaddrs: readonly string[]): readonly Address[] {
  const found = new Map<number, Address>();
  for (const xaddr of xaddrs) {
    const address = parseAddress(XADDR.exec(xaddr)?.[1] ?? '');
    if (address.ok && !isBlank(address.value)) found.set(address.value.bits, address.value);
  }
  return [...found.values()];
}

const NAME_SCOPE = /^onvif:\/\/www\.onvif\.org\/name\/([^/?#]{1,300})$/i;
const LONGEST_NAME = 60;

function nameIn(scope: string): readonly string[] {
  const written = NAME_SCOPE.exec(scope)?.[1];
  return written === undefined ? [] : [printable(percentDecoded(written), LONGEST_NAME)];
}

function percentDecoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function isNamed(element: XmlElement, namespaces: readonly string[], name: string): boolean {
  return element.name === name && namespaces.includes(element.namespace);
}

function childOf(
  element: XmlElement | undefined,
  namespaces: readonly string[],
  name: string,
): XmlElement | undefined {
  return element?.children.find((child) => isNamed(child, namespaces, name));
}

/** The text of an element, taken apart at its blanks. */
function wordsOf(element: XmlElement | undefined): readonly string[] {
  return element === undefined ? [] : element.text.split(/[ \t\r\n]+/).filter((word) => word !== '');
}
