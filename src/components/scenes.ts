/** The opening pictures of the chapters: one scene of the workshop each, in lines, 320 by 96. */

interface Scene {
  /** What the picture shows, for who doesn't see it */
  readonly label: string;
  readonly lines: string;
}

const range = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

/** A guitar in plan from its head to its end: `neck` from nut to body, at the height `y`, drawn at `scale`. */
function guitar(x: number, y: number, neck = 120, scale = 1): string {
  const body = neck + 14;
  return `<g transform="translate(${x} ${y}) scale(${scale})">
    <path d="M-30-4L-4-7V7L-30 6q-8-5 0-10zM0-6H${body}M0 6H${body}M0-6V6"/>
    <path class="soft" d="${range(9)
      .map((i) => `M${(neck * 1.65 * (1 - 2 ** (-(i + 1) / 12))).toFixed(1)}-6V6`)
      .join('')}"/>
    <path d="M${body}-7c8-18 30-20 42-9 8 7 16 6 24 0 20-13 50-6 50 16s-30 29-50 16c-8-6-16-7-24 0-12 11-34 9-42-9z"/>
    <path d="M${neck * 1.65}-9V9M-4-3H${neck * 1.65}M-4 3H${neck * 1.65}"/>
  </g>`;
}

const wave = (y: number, heights: readonly number[]): string =>
  `<path d="M30 ${y}${heights.map((h) => `q${130 / heights.length} ${-2 * h} ${260 / heights.length} 0`).join('')}"/>`;

const packet = (x: number, name: string): string =>
  `<path d="M${x} 16h92v64h-92z"/><path class="soft" d="M${x} 30h92M${x + 46} 54m-16 0a16 16 0 1 0 32 0a16 16 0 1 0-32 0"/>
  <text x="${x + 46}" y="59">${name}</text>`;

export const scenes: Readonly<Record<string, Scene>> = {
  'two-guitars': {
    label: 'Two guitars on the bench, the lower one a little longer.',
    lines: guitar(50, 26, 112, 0.82) + guitar(50, 70, 120, 0.82),
  },
  'an-inch': {
    label: 'Two necks with their nuts in line. One saddle is a little further out.',
    lines: `<path d="M30 22H250M30 34H250M30 22V34M30 62H262M30 74H262M30 62V74"/>
      <path class="bold" d="M250 16V40M262 56V80"/><path class="soft" d="M250 44V92M262 84V92M30 40V56"/>
      <path d="M238 88H250M262 88H274M246 85l4 3-4 3M266 85l-4 3 4 3"/>`,
  },
  tuner: {
    label: 'A tuner whose needle stands a little to the flat side.',
    lines: `<path d="M100 86V34q0-16 16-16h88q16 0 16 16V86z"/><path class="soft" d="M112 70a58 58 0 0 1 96 0"/>
      <path d="${range(7)
        .map((i) => {
          const a = ((i - 3) * Math.PI) / 9;
          const at = (r: number) =>
            `${(160 + r * Math.sin(a)).toFixed(1)} ${(92 - r * Math.cos(a)).toFixed(1)}`;
          return `M${at(50)}L${at(58)}`;
        })
        .join('')}"/><path class="bold" d="M160 84L139 38"/>`,
  },
  packets: {
    label: 'Two packets of strings, marked 10 and 11.',
    lines: packet(54, '10') + packet(174, '11'),
  },
  'cut-end': {
    label: 'The cut end of a wound string: a six-sided core with a wire wound round it.',
    lines: `<path d="M70 20l24 14v28l-24 14-24-14V34z"/><circle cx="70" cy="48" r="42"/><circle class="soft" cx="70" cy="48" r="28"/>
      <path d="M150 40H300M150 56H300"/><path d="${range(9)
        .map((i) => `M${158 + i * 15} 26q10 22 0 44q-7 4-7-4`)
        .join('')}"/>`,
  },
  finger: {
    label: 'A fingertip on a string, between two frets.',
    lines: `<path d="M20 74H300M20 90H300"/><path d="M96 74a6 6 0 0 1 12 0M206 74a6 6 0 0 1 12 0"/>
      <path d="M20 50L196 73L212 68L300 46"/><path d="M160 8q-2 44 14 58q16 10 24-6q8-24 4-52"/><path class="soft" d="M170 56q6-10 20-8"/>`,
  },
  bend: {
    label: 'A string pushed sideways by a finger, between its straight neighbours.',
    lines: `<path class="soft" d="M20 20H300M20 70H300M20 84H300"/><path d="M20 56L180 30L300 56"/>
      <path class="soft" stroke-dasharray="4 4" d="M20 56H300"/><path d="M166 92q-2-40 6-52q8-8 16 0q8 12 6 52"/>`,
  },
  waves: {
    label: 'Two waves: one that repeats evenly, and one that doesn’t.',
    lines: wave(28, [9, -9, 9, -9, 9, -9, 9, -9]) + wave(70, [12, -4, 9, -12, 3, -9, 5, -2]),
  },
  'one-feel': {
    label: 'A guitar, a packet of strings marked 9.5, and an arrow to a second guitar.',
    lines:
      guitar(26, 48, 56, 0.52) +
      guitar(222, 48, 60, 0.52) +
      `<path d="M140 30h46v36h-46z"/><text x="163" y="53">9.5</text><path d="M124 48h11M191 48h11M198 44l4 4-4 4"/>`,
  },
  low: {
    label: 'A note far below the lines of a staff.',
    lines: `<path class="soft" d="M40 14H280M40 24H280M40 34H280M40 44H280M40 54H280"/>
      <ellipse cx="110" cy="49" rx="7" ry="5"/><path d="M117 49V18"/>
      <path class="soft" d="M196 64h28M196 74h28M196 84h28"/><ellipse cx="210" cy="84" rx="7" ry="5"/><path d="M217 84V52"/>`,
  },
  slanting: {
    label: 'A fingerboard whose frets slant, one of them straight across.',
    lines: `<path d="M46 20L290 14M28 76L300 82"/><path d="${range(13)
      .map((i) => {
        const s = i / 12;
        return `M${(46 + 232 * s).toFixed(1)} ${(20 - 6 * s).toFixed(1)}L${(28 + 262 * s).toFixed(1)} ${(76 + 6 * s).toFixed(1)}`;
      })
      .join(
        '',
      )}"/><path class="soft" d="M44 34L288 31M38 48H292M34 62L294 65"/><path class="bold" d="M46 20L28 76"/>`,
  },
  tipped: {
    label: 'A bridge on a knife edge, its tail tipped up, with a spring below.',
    lines: `<path d="M20 62H120M210 62H300"/><path d="M112 44l16 8-16 12z"/>
      <path d="M128 52L226 26l3 10L131 62z"/><path class="bold" d="M20 40L150 38"/><path d="M150 38q6 0 6 8"/>
      <path d="M142 60l6 22M148 82H60"/><path class="soft" d="${range(8)
        .map((i) => `M${64 + i * 10} 88l5-12`)
        .join('')}"/>`,
  },
  snapped: {
    label: 'A string that has snapped at its saddle and curls back.',
    lines: `<path d="M230 66h34v20h-34zM236 66q11-14 22 0"/><path d="M262 66q14 2 38 16"/>
      <path class="bold" d="M20 52H120C170 52 190 46 196 32C202 16 178 8 172 22C168 34 190 38 204 22C210 14 220 12 226 16"/>
      <path class="soft" d="M238 54l-4-8M247 50V40M256 54l4-8"/>`,
  },
  saddles: {
    label: 'Six saddles on a bridge, set back by different amounts.',
    lines: [0, 5, 10, 3, 8, 13]
      .map(
        (back, i) =>
          `<path d="M${150 + back} ${8 + i * 14}h22v10h-22z"/><path class="soft" d="M20 ${13 + i * 14}H${150 + back}M${172 + back} ${13 + i * 14}H300"/>`,
      )
      .join(''),
  },
};
