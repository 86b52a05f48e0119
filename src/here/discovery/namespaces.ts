/** SOAP Version 1.2 Part 1, section 5. */
export const SOAP = 'http://www.w3.org/2003/05/soap-envelope';

/** WS-Addressing of August 2004, which WS-Discovery of 2005 uses, and 1.0 of May 2005, which WS-Discovery 1.1 uses. */
export const ADDRESSING_2004 = 'http://schemas.xmlsoap.org/ws/2004/08/addressing';
export const ADDRESSING: readonly string[] = [ADDRESSING_2004, 'http://www.w3.org/2005/08/addressing'];

/** The draft of April 2005, which the ONVIF Core Specification names, and WS-Discovery 1.1 (OASIS, July 2009). */
export const DISCOVERY_2005 = 'http://schemas.xmlsoap.org/ws/2005/04/discovery';
export const DISCOVERY: readonly string[] = [
  DISCOVERY_2005,
  'http://docs.oasis-open.org/ws-dd/ns/discovery/2009/01',
];

/** Where the ONVIF Core Specification defines the type of a network video transmitter. */
export const ONVIF_NETWORK = 'http://www.onvif.org/ver10/network/wsdl';
