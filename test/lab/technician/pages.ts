import { CANT_TELL, type Eyes, value } from './eye.js';
import { anyCameraPage } from './hands.js';
import { row } from './rows.js';

/** What else stands on the camera's page. */
export const PAGE_EYES: Eyes = {
  'service-state': async (seat) => {
    const page = await anyCameraPage(seat);
    if (page === undefined) return CANT_TELL;
    const state = row(page, 'Service connection');
    return value(state === 'online' || state === 'offline' || state === 'off' ? state : 'no-such');
  },
  'time-test': async (seat) => {
    const page = await anyCameraPage(seat);
    if (page === undefined) return CANT_TELL;
    const state = row(page, 'Time server');
    if (state === undefined || state === 'not tried' || state === 'not set') return value('no-such');
    return value(/^ok\b/.test(state) ? 'good' : 'failed');
  },
};
