/** The page of help for a function, from the folder of the page or of the add-in. */
export const helpPage = (id: string): string => `help/${id.toLowerCase()}.html`;
