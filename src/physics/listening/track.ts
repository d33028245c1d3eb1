/** Finds partial after partial where those before it say that it must be. */
import { partialOf, type Comb, type Found } from './coarse.ts';
import { strongestIn, type Landscape } from './spectrum.ts';

/** A guess before anything was measured is off by so much: relative, and in B */
const FIRST_DOUBT = { fundamental: 0.006, inharmonicity: 1e-4 };
/** Cents by which a body may push a partial aside */
const PUSHED = 4;
/** A partial must stand so many times over the noise: noise alone does in one window of a thousand. */
const ABOVE = 12;
/** One that dies away fast is spread over so many steps that none stands out, and yet a tone may fit it well. */
const FAINT = 4;
const MOST_PARTIALS = 80;
/** After so many empty windows in a row there is nothing more to find. */
const GIVE_UP = 9;

const relative = (cents: number): number => (cents * Math.LN2) / 1200;

/**
 * Partials of the comb near `guess`, from the lowest up. Since (f/n)² = f0² + f0² B n² is a straight line in n², each partial found
 * makes the line surer by two steps of recursive least squares, and the window for the next one narrower.
 */
export function track(land: Landscape, guess: Comb, highest: number): readonly Found[] {
  const scale = guess.fundamental ** 2;
  let [level, slope] = [1, guess.inharmonicity];
  let [pLevel, pBoth, pSlope] = [
    (2 * FIRST_DOUBT.fundamental) ** 2,
    0,
    FIRST_DOUBT.inharmonicity ** 2,
  ];
  const found: Found[] = [];
  for (let n = 1, empty = 0; n <= MOST_PARTIALS && empty < GIVE_UP; n += 1) {
    const square = Math.max(level + slope * n * n, 0.25);
    const frequency = n * Math.sqrt(scale * square);
    if (frequency > highest) break;
    const variance = pLevel + 2 * n * n * pBoth + n ** 4 * pSlope;
    const doubt = (frequency * Math.sqrt(variance)) / (2 * square);
    const reach = Math.min(
      0.3 * guess.fundamental,
      3 * doubt + 2 * land.resolution + frequency * relative(PUSHED),
    );
    const peak = strongestIn(land, frequency - reach, frequency + reach, ABOVE);
    if (!peak) {
      empty += 1;
      continue;
    }
    empty = 0;
    found.push({ n, peak });
    const measured = (peak.frequency / n) ** 2 / scale;
    const own = Math.hypot(relative(PUSHED), (0.3 * land.resolution) / peak.frequency);
    const noise = (2 * measured * own) ** 2;
    const [gLevel, gSlope] = [pLevel + n * n * pBoth, pBoth + n * n * pSlope];
    const total = variance + noise;
    const off = measured - square;
    level += (gLevel / total) * off;
    slope += (gSlope / total) * off;
    pLevel -= (gLevel * gLevel) / total;
    pSlope -= (gSlope * gSlope) / total;
    pBoth -= (gLevel * gSlope) / total;
  }
  return found;
}

/** As `track`, near a comb that is known well: within `cents` and two steps of resolution of each partial, the faint ones too. */
export function trackAlong(
  land: Landscape,
  comb: Comb,
  { cents, highest }: { cents: number; highest: number },
): readonly Found[] {
  const found: Found[] = [];
  for (let n = 1, empty = 0; n <= MOST_PARTIALS && empty < GIVE_UP; n += 1) {
    const frequency = partialOf(comb, n);
    if (frequency > highest) break;
    const reach = frequency * relative(cents) + 2 * land.resolution;
    const [low, high] = [frequency - reach, frequency + reach];
    const peak = strongestIn(land, low, high, ABOVE);
    const faint = peak ? undefined : strongestIn(land, low, high, FAINT);
    if (peak) found.push({ n, peak });
    else if (faint) found.push({ n, peak: faint, faint: true });
    empty = peak ? 0 : empty + 1;
  }
  return found;
}
