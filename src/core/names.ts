/** Words are matched without regard to case, spaces, hyphens and underscores. */
export const foldWord = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, '');
