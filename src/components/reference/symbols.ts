/** The symbols of the model: what each means, its unit, and the equation that it follows from. */

export interface SymbolLine {
  /** TeX */
  readonly symbol: string;
  readonly means: string;
  readonly unit: string;
  /** TeX; none for what is measured or given */
  readonly equation?: string;
  /** Id in the list of sources; none where the equation is a definition or plane geometry */
  readonly source?: string;
}

const tex = String.raw;

export const symbols: readonly SymbolLine[] = [
  { symbol: 'L', means: 'speaking length, nut to saddle', unit: 'm' },
  { symbol: 'd', means: 'diameter of wire', unit: 'm' },
  { symbol: tex`\rho`, means: 'density of a material', unit: 'kg/m³' },
  { symbol: 'E', means: 'Young’s modulus of a material', unit: 'Pa' },
  {
    symbol: 'f',
    means: 'frequency of the note, so many semitones above A4',
    unit: 'Hz',
    equation: tex`f = f_{A4}\,2^{s/12}`,
    source: 'iso-16',
  },
  {
    symbol: tex`\mu`,
    means: 'unit weight of plain wire; of wound strings, core and helices summed',
    unit: 'kg/m',
    equation: tex`\mu = \rho\,\pi d^2/4`,
  },
  {
    symbol: 'T',
    means: 'pull of the tuned string',
    unit: 'N',
    equation: tex`T = \mu\,(2Lf)^2`,
    source: 'openstax-physics-1',
  },
  {
    symbol: 'A',
    means: 'section that carries the pull: wire, or core of s across flats',
    unit: 'm²',
    equation: tex`A = \pi d^2/4,\ \sqrt{3}\,s^2/2`,
  },
  { symbol: tex`\sigma`, means: 'stress in wire or core', unit: 'Pa', equation: tex`\sigma = T/A` },
  {
    symbol: tex`\varepsilon`,
    means: 'strain, the share by which a string is stretched',
    unit: 'none',
    equation: tex`\varepsilon = T/(EA)`,
  },
  {
    symbol: 'I',
    means: 'second moment of a round section',
    unit: 'm⁴',
    equation: tex`I = \pi d^4/64`,
  },
  {
    symbol: 'B',
    means: 'inharmonicity coefficient',
    unit: 'none',
    equation: tex`B = \pi^2 EI/(TL^2)`,
    source: 'fletcher-1964',
  },
  {
    symbol: 'f_n',
    means: 'frequency of a stiff string’s partial',
    unit: 'Hz',
    equation: tex`f_n = nf\sqrt{1 + Bn^2}`,
    source: 'fletcher-1964',
  },
  {
    symbol: 'y',
    means: 'travel of a bend, a from the saddle and b from the nut; T rises by',
    unit: 'm',
    equation: tex`\Delta T \approx EA\,y^2/(2ab)`,
    source: 'grimes-2014',
  },
  {
    symbol: 'x_k',
    means: 'place of fret k, with n to the octave, from the nut',
    unit: 'm',
    equation: tex`x_k = L\,(1 - 2^{-k/n})`,
  },
];
