/** One camera's part of an answer. */
export interface SampleMatch {
  readonly endpoint?: string;
  readonly types?: string;
  readonly scopes?: string;
  readonly xaddrs?: string;
}

export interface SampleAnswer {
  readonly relatesTo?: string;
  readonly action?: string;
  readonly matches?: readonly SampleMatch[];
  /** Stands behind the declaration. */
  readonly before?: string;
}

export const ASKED = '0a6dc791-2be6-4991-9af1-454778a1917a';

/** A ProbeMatches message as a camera would send it, with prefixes of its own; the names are invented. */
export function sampleAnswer({
  relatesTo = `urn:uuid:${ASKED}`,
  action = 'http://schemas.xmlsoap.org/ws/2005/04/discovery/ProbeMatches',
  matches = [{}],
  before = '',
}: SampleAnswer = {}): string {
  return `<?xml version="1.0" encoding="UTF-8"?>${before}
<SOAP-ENV:Envelope xmlns:SOAP-ENV="http://www.w3.org/2003/05/soap-envelope"
    xmlns:wsa="http://schemas.xmlsoap.org/ws/2004/08/addressing"
    xmlns:wsdd='http://schemas.xmlsoap.org/ws/2005/04/discovery'
    xmlns:tds="http://www.onvif.org/ver10/device/wsdl"
    xmlns:net="http://www.onvif.org/ver10/network/wsdl">
  <SOAP-ENV:Header>
    <wsa:MessageID>urn:uuid:5b0e4c1e-0000-4000-8000-02005e100057</wsa:MessageID>
    <wsa:RelatesTo>${relatesTo}</wsa:RelatesTo>
    <wsa:To SOAP-ENV:mustUnderstand="true">http://schemas.xmlsoap.org/ws/2004/08/addressing/role/anonymous</wsa:To>
    <wsa:Action SOAP-ENV:mustUnderstand="true">${action}</wsa:Action>
    <wsdd:AppSequence InstanceId="7" MessageNumber="3"/>
  </SOAP-ENV:Header>
  <SOAP-ENV:Body>
    <wsdd:ProbeMatches>${matches.map(sampleMatch).join('')}
    </wsdd:ProbeMatches>
  </SOAP-ENV:Body>
</SOAP-ENV:Envelope>
`;
}

function sampleMatch({
  endpoint = 'urn:uuid:11111111-2222-4333-8444-02005e100057',
  types = 'net:NetworkVideoTransmitter tds:Device',
  scopes = 'onvif://www.onvif.org/type/video_encoder onvif://www.onvif.org/name/North%20Gate onvif://www.onvif.org/location/yard',
  xaddrs = 'http://172.23.40.57/onvif/device_service',
}: SampleMatch): string {
  return `
      <wsdd:ProbeMatch>
        <wsa:EndpointReference>
          <wsa:Address>${endpoint}</wsa:Address>
        </wsa:EndpointReference>
        <wsdd:Types>${types}</wsdd:Types>
        <wsdd:Scopes>
          ${scopes}
        </wsdd:Scopes>
        <wsdd:XAddrs>${xaddrs}</wsdd:XAddrs>
        <wsdd:MetadataVersion>1</wsdd:MetadataVersion>
      </wsdd:ProbeMatch>`;
}
