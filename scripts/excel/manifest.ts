/** The address in manifest.xml, where `npm run excel` serves the add-in. */
export const DEVELOPMENT_ORIGIN = 'https://localhost:3443';

/** Checks the address that the built add-in is to be served from; returned without a slash at its end. */
export const readOrigin = (given: string | undefined): string => {
  if (given === undefined) return DEVELOPMENT_ORIGIN;
  const wrong = new Error(
    `origin must be an https address such as https://example.com/moldsheet, not "${given}"`,
  );
  let url: URL;
  try {
    url = new URL(given);
  } catch {
    throw wrong;
  }
  if (url.protocol !== 'https:' || url.search || url.hash || url.username) throw wrong;
  return url.href.replace(/\/+$/, '');
};

/** The manifest for an add-in served from `origin`. */
export const manifestFor = (developmentManifest: string, origin: string): string =>
  developmentManifest.replaceAll(DEVELOPMENT_ORIGIN, origin);
