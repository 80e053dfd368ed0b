import { later } from '../later';

/** Few of those who open the panel share: its controls come when the tab is first shown. */
export const ShareTab = later(async () => (await import('./Share')).Share);
