/** What an ear can tell, in cents, for the band around being in tune. */
/** The smallest difference of pitch that an ear can tell, about 0.3 %, in cents. Source: OpenStax, College Physics, read. */
export const pitchJustNoticed = 1200 * Math.log2(1.003);
