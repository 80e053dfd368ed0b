/** Of sums of money. */
export const NO_USUAL_MONEY = 'Money differs by country and year';
