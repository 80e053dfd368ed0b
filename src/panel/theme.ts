import {
  createDarkTheme,
  createLightTheme,
  type BrandVariants,
  type Theme,
} from '@fluentui/react-components';

/** One ramp of a muted petrol, dark to light, for the controls and the grid alike. */
export const brand: BrandVariants = {
  10: '#03080a',
  20: '#0b1b1f',
  30: '#0e2d34',
  40: '#103a43',
  50: '#124852',
  60: '#145662',
  70: '#166572',
  80: '#1a7383',
  90: '#3a8190',
  100: '#56909d',
  110: '#6f9faa',
  120: '#88aeb8',
  130: '#a0bdc5',
  140: '#b9cdd3',
  150: '#d1dde1',
  160: '#e9eef0',
};

export const lightTheme: Theme = createLightTheme(brand);

export const darkTheme: Theme = {
  ...createDarkTheme(brand),
  colorBrandForeground1: brand[120],
  colorBrandForeground2: brand[130],
  colorBrandForegroundLink: brand[130],
};
