/// <reference types="office-js" />

/** How often the theme is read anew while the panel is seen: Excel has no event that tells of a change. */
const EVERY = 2000;

const darkSystem = (): MediaQueryList => window.matchMedia('(prefers-color-scheme: dark)');

/** Whether Excel is dark; the system's own choice where Excel does not tell, as on the web. */
export function isDark(): boolean {
  const theme = Office.context.officeTheme as Partial<Office.OfficeTheme> | undefined;
  if (theme?.isDarkTheme !== undefined) return theme.isDarkTheme;
  const light = lightnessOf(theme?.bodyBackgroundColor);
  return light === undefined ? darkSystem().matches : light < 0.5;
}

/** Calls back whenever Excel may have changed between light and dark; gives back how to stop. */
export function onThemeLook(listener: () => void): () => void {
  const look = (): void => {
    if (document.visibilityState === 'visible') listener();
  };
  const timer = setInterval(look, EVERY);
  const system = darkSystem();
  window.addEventListener('focus', look);
  document.addEventListener('visibilitychange', look);
  system.addEventListener('change', look);
  return () => {
    clearInterval(timer);
    window.removeEventListener('focus', look);
    document.removeEventListener('visibilitychange', look);
    system.removeEventListener('change', look);
  };
}

/** 0 for black, 1 for white; undefined for what is no `#rrggbb`. */
function lightnessOf(color: string | undefined): number | undefined {
  const [, red, green, blue] = /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})/i.exec(color ?? '') ?? [];
  if (red === undefined || green === undefined || blue === undefined) return undefined;
  const part = (hex: string): number => parseInt(hex, 16) / 255;
  return 0.299 * part(red) + 0.587 * part(green) + 0.114 * part(blue);
}
