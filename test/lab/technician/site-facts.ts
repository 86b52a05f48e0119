/** In the notes of whoever put the camera up, in the app, and in the browser's favourites. */
export const CAMERA_NOTED = '172.23.40.21';

/** The camera's name, as it stands at the top of its own page. */
export const CAMERA_TITLE = 'Yard camera';

/** The port of its page, in the same notes. */
export const CAMERA_PORT = '80';

/** The site's address on the internet, as it was noted for those who type it in the app. */
export const OUTSIDE_NOTED = '198.51.100.2';

export const ROUTER_LABEL = { lan: 'lan0', address: '172.23.40.1' } as const;

/** A page somewhere in the web, the words on it, and behind which of them it shows who asks. */
export const WEB_PAGE = {
  url: 'http://www.example/',
  words: 'This page opens',
  seen: /as seen from here: ([\d.]+)/,
} as const;
