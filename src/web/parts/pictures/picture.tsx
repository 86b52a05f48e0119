import type { Picture } from '../../../call/pictures/picture.js';
import { DaysPicture } from './days.js';
import { NetworkBarPicture } from './network-bar.js';
import { ReachPicture } from './reach.js';
import { VoltsPicture } from './volts.js';

/** What a sum looks like. */
export function PictureOf({ picture }: { readonly picture: Picture }) {
  switch (picture.kind) {
    case 'network':
      return <NetworkBarPicture bar={picture} />;
    case 'volts':
      return <VoltsPicture volts={picture} />;
    case 'days':
      return <DaysPicture days={picture} />;
    case 'reach':
      return <ReachPicture reach={picture} />;
  }
}
