/** The roads to a low note, and half of each of two. */
export type Road = 'down' | 'longer' | 'thicker' | 'half';
