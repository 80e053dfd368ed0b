/** Words are matched without regard to case, spaces, hyphens and dots at the end. */
export const foldWord = (text: string): string => text.toLowerCase().replace(/[\s_-]+/g, '');
