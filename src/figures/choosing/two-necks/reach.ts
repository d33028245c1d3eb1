/** What the plot of residuals shows to either side of the same pull, per cent. */
export const REACH = 32;
