import type { Story } from '../types.js';

/** What people tell most often. */
export const JUST_SO: Story = { everWorked: true, changed: 'nothing', when: 'today' };
export const NEVER: Story = { everWorked: false, changed: 'nothing', when: 'never-worked' };

/** It worked until this changed. */
export function since(changed: Story['changed'], when: 'today' | 'days' | 'weeks' = 'days'): Story {
  return { everWorked: true, changed, when };
}

/** The letters and digits on the labels. */
export const MAC = {
  camera: '02:53:00:00:00:21',
  computer: '02:53:00:00:00:31',
  twin: '02:53:00:00:00:41',
} as const;
