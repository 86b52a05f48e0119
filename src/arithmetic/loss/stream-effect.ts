import type { Sentence } from '../../messages/say.js';
import { showBitRate } from '../../values/bit-rate.js';
import { showShares } from '../../values/share.js';
import type { Worked } from '../worked.js';
import type { Interval } from './wilson.js';

/** Bytes of picture in one packet over UDP: what an Ethernet frame holds, less headers; judged, no source. */
const PACKET_BYTES = 1400;
/** The largest segment of TCP over Ethernet: 1,500 bytes less 40 of headers (RFC 9293, section 3.7.1). */
const SEGMENT_BYTES = 1460;
const MATHIS = Math.sqrt(3 / 2);

/** Packets that carry one frame on average; at least one. `rate` in bit/s, `frames` a second. */
export function packetsAFrame(rate: number, frames: number): number {
  return Math.max(1, rate / 8 / frames / PACKET_BYTES);
}

/** The share of frames that lose a packet, 1 - (1 - p)^n, if packets are lost independently. */
export function framesHit(loss: number, packets: number): number {
  return 1 - (1 - loss) ** packets;
}

/**
 * The rate in bit/s that one TCP connection reaches at most with loss `loss` (above 0, small) and a round
 * trip in ms: MSS/RTT x sqrt(3/2)/sqrt(p) (Mathis, Semke, Mahdavi, Ott 1997, "The macroscopic behavior
 * of the TCP congestion avoidance algorithm"). Infinite without loss.
 */
export function tcpCeiling(loss: number, roundTripMs: number): number {
  return ((SEGMENT_BYTES * 8) / (roundTripMs / 1000)) * (MATHIS / Math.sqrt(loss));
}

/** What the loss does to a picture sent over UDP, and how fast one sent over TCP can run. */
export interface StreamEffect {
  readonly framesHit: Interval;
  /** At the upper end of the loss, in bit/s; absent where no round trip is known. */
  readonly tcpBitsPerSecond?: number;
}

/** Both for a range of loss. The round trip must be above nought where it is given. */
export function streamEffect(
  loss: Interval,
  rate: number,
  frames: number,
  roundTripMs?: number,
): Worked<StreamEffect> {
  const packets = packetsAFrame(rate, frames);
  const hit = { low: framesHit(loss.low, packets), high: framesHit(loss.high, packets) };
  const lines: readonly Sentence[] = [
    {
      id: 'loss.frames-hit',
      with: { rate: showBitRate(rate), frames, packets: packets.toFixed(1), share: showShares(hit) },
    },
  ];
  if (roundTripMs === undefined) return { value: { framesHit: hit }, lines };
  const ceiling = tcpCeiling(loss.high, roundTripMs);
  const tcp: Sentence = {
    id: ceiling < rate ? 'loss.tcp-too-slow' : 'loss.tcp-enough',
    with: { ceiling: showBitRate(ceiling), rate: showBitRate(rate) },
  };
  return { value: { framesHit: hit, tcpBitsPerSecond: ceiling }, lines: [...lines, tcp] };
}
