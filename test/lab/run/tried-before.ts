import { createHash } from 'node:crypto';
import type { Tried } from '../types.js';

/** Of a hundred people who ring about a camera that is dark on the phone, who has done what; judged, no source. */
export const TRIED_SHARES: Readonly<Record<Tried, number>> = { camera: 30, router: 35, phone: 70 };

/** The same of a camera that never showed: who has just put it up has its lead in hand; judged, no source. */
export const TRIED_SHARES_NEW: Readonly<Record<Tried, number>> = { camera: 55, router: 20, phone: 60 };

/** Remedies that are the same act; a lead that was pushed in anew counts as the camera's. */
const SAME_AS: Readonly<Record<Tried, readonly string[]>> = {
  camera: ['restart-camera', 'reseat-lead'],
  router: ['restart-router'],
  phone: [],
};

const KINDS: readonly Tried[] = ['camera', 'router', 'phone'];

/** What this caller did before ringing; whoever did what mends the fault has the picture back and does not ring. */
export function triedBefore(faultId: string, mends: readonly string[], everWorked = true): readonly Tried[] {
  const shares = everWorked ? TRIED_SHARES : TRIED_SHARES_NEW;
  return KINDS.filter(
    (kind) => !SAME_AS[kind].some((id) => mends.includes(id)) && percentile(faultId, kind) < shares[kind],
  );
}

/** From 0 up to 100. */
function percentile(faultId: string, kind: Tried): number {
  const digest = createHash('sha256').update(`${faultId}/${kind}`).digest();
  return (100 * digest.readUInt32BE(0)) / 2 ** 32;
}
