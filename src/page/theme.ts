import { defaultTheme } from '@univerjs/themes';
import { brand } from '../panel/theme';

export const gridTheme = {
  ...defaultTheme,
  primary: {
    50: brand[160],
    100: brand[150],
    200: brand[140],
    300: brand[130],
    400: brand[110],
    500: brand[90],
    600: brand[70],
    700: brand[60],
    800: brand[50],
    900: brand[30],
  },
};

const darkMedia = () => window.matchMedia('(prefers-color-scheme: dark)');

export const prefersDark = (): boolean => darkMedia().matches;

/** Calls back whenever the reader's system changes between light and dark; gives back how to stop. */
export function onDarkChange(listener: (dark: boolean) => void): () => void {
  const media = darkMedia();
  const heard = (event: MediaQueryListEvent) => {
    listener(event.matches);
  };
  media.addEventListener('change', heard);
  return () => {
    media.removeEventListener('change', heard);
  };
}
