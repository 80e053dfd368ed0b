/** The page of help for a function, from the folder of the page or of the add-in. */
export const helpPage = (id: string): string => `help/${id.toLowerCase()}.html`;

export const HELP_LIST = 'help/index.html';
/** The chapters that walk one job. */
export const GUIDE = 'help/guide/index.html';
