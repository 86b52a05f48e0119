import { ADDRESSING_2004, DISCOVERY_2005, ONVIF_NETWORK, SOAP } from './namespaces.js';

const UUID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

/**
 * The datagram that asks every network video transmitter to say who and where it is: WS-Discovery of April 2005,
 * section 5.2 (Probe), with the type that the ONVIF Core Specification gives. Without ReplyTo the answer comes to the
 * port that asked. Throws where the id is no UUID: that is a fault of ours.
 */
export function probeMessage(uuid: string): string {
  if (!UUID.test(uuid)) throw new Error(`not a UUID: ${uuid}`);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<s:Envelope xmlns:s="${SOAP}" xmlns:a="${ADDRESSING_2004}" xmlns:d="${DISCOVERY_2005}" xmlns:dn="${ONVIF_NETWORK}">`,
    '<s:Header>',
    `<a:Action>${DISCOVERY_2005}/Probe</a:Action>`,
    `<a:MessageID>urn:uuid:${uuid}</a:MessageID>`,
    '<a:To>urn:schemas-xmlsoap-org:ws:2005:04:discovery</a:To>',
    '</s:Header>',
    '<s:Body><d:Probe><d:Types>dn:NetworkVideoTransmitter</d:Types></d:Probe></s:Body>',
    '</s:Envelope>',
  ].join('');
}
