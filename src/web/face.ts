import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Desk } from './desk.js';
import type { Device } from './device.js';
import type { Keeper } from './keep.js';
import type { PackedRules } from './packed.js';
import type { Store } from './state.js';

/** What every part of the page can reach. */
export interface Face {
  readonly packed: PackedRules;
  readonly store: Store;
  readonly desk: Desk;
  readonly keeper: Keeper;
  readonly device: Device;
}

export const FACE = createContext<Face | undefined>(undefined);

export function useFace(): Face {
  const face = useContext(FACE);
  if (!face) throw new Error('no face around this part');
  return face;
}
