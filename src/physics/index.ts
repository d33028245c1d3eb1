/** The public face of the physics: pure functions, SI units, no dependencies. Run it anywhere Node or a browser runs. */
export * from './construction.ts';
export * from './feel.ts';
export * from './frets.ts';
export * from './match.ts';
export * from './materials.ts';
export * from './pitch.ts';
export * from './strength.ts';
export * from './tension.ts';
export * from './units.ts';
