/** Two sheets for one drawing: a phone's, and a wide screen's where weight and lettering stand beside the box. */

export interface Frame {
  readonly name: 'phone' | 'wide';
  readonly width: number;
  readonly height: number;
  /** Height of the string, and how far it swings */
  readonly string: number;
  readonly swing: number;
  /** The string is drawn this much thicker than in the other figures */
  readonly thick: number;
  readonly box: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly nut: number;
  /** The farthest place of the saddle */
  readonly floor: number;
  readonly pulley: { readonly x: number; readonly radius: number };
  /** Height of the length's dimension line, and of the words below it */
  readonly dimension: number;
  readonly lengthWords: number;
  /** The weight: middle, width, top; its height for the string as it is, and at most */
  readonly weight: {
    readonly x: number;
    readonly width: number;
    readonly top: number;
    readonly own: number;
    readonly tallest: number;
  };
  /** The pull is lettered below the weight or beside its foot */
  readonly beside: boolean;
  /** The ladder of semitones: its rail, the highest rung, from rung to rung */
  readonly ladder: { readonly x: number; readonly top: number; readonly rung: number };
  /** The section: left jaw, middle, drawn diameter of the string's own gauge */
  readonly section: { readonly left: number; readonly middle: number; readonly own: number };
  /** First line of the words on pitch and on gauge */
  readonly words: number;
}

export const phone: Frame = {
  name: 'phone',
  width: 360,
  height: 474,
  string: 46,
  swing: 21,
  thick: 1,
  box: { left: 6, right: 300, top: 76, bottom: 104 },
  nut: 28,
  floor: 284,
  pulley: { x: 314, radius: 11 },
  dimension: 132,
  lengthWords: 165,
  weight: { x: 325, width: 54, top: 190, own: 64, tallest: 238 },
  beside: false,
  ladder: { x: 46, top: 244, rung: 12.4 },
  section: { left: 164, middle: 304, own: 54 },
  words: 202,
};

export const wide: Frame = {
  name: 'wide',
  width: 1040,
  height: 590,
  string: 66,
  swing: 34,
  thick: 1.6,
  box: { left: 2, right: 800, top: 112, bottom: 158 },
  nut: 60,
  floor: 768,
  pulley: { x: 832, radius: 20 },
  dimension: 204,
  lengthWords: 244,
  weight: { x: 852, width: 96, top: 236, own: 96, tallest: 300 },
  beside: true,
  ladder: { x: 106, top: 308, rung: 14 },
  section: { left: 448, middle: 424, own: 96 },
  words: 312,
};
