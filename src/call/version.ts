/** The version of this program; a test holds that package.json says the same. */
export const VERSION = '0.1.0';
