/**
 * Listening to made plucks whose fundamental and inharmonicity are known, and to what is no string. How sure anybody could be is the
 * bound of Cramer and Rao, worked out in `plucked.ts` by a general matrix library.
 */
import { describe, expect, it } from 'vitest';

import { listen, type HeardString } from '../../src/physics/listen.ts';
import { bound, normal, sound, type Plucked } from './plucked.ts';
import { generator } from './labs/chance.ts';

const heard = (pluck: Plucked, seed: number): HeardString => {
  const answer = listen(sound(pluck, seed));
  if (!answer.ok) throw new Error(`refused (${answer.reason}): ${JSON.stringify(pluck)}`);
  return answer;
};

const cents = (ratio: number): number => 1200 * Math.log2(ratio);

interface Draw {
  readonly pluck: Plucked;
  readonly seed: number;
  readonly answer: HeardString;
}

interface Kind {
  readonly beats?: boolean;
  readonly gaps?: boolean;
  readonly thin?: boolean;
}

/** Plucks of all kinds of strings: 30 to 700 Hz, B from a millionth to a thousandth, noise from 80 to 50 dB down. */
function draws(count: number, first: number, kind: Kind, recording: Partial<Plucked> = {}): Draw[] {
  const random = generator(first);
  const between = (low: number, high: number) => low + (high - low) * random();
  return Array.from({ length: count }, (_, i) => {
    const plain = {
      fundamental: 30 * (700 / 30) ** random(),
      inharmonicity: 1e-6 * 1000 ** random(),
      noise: 10 ** between(-4, -2.5),
      pluckedAt: between(0.08, 0.28),
      rings: between(0.3, 1.8),
    };
    const pluck: Plucked = {
      ...plain,
      ...recording,
      second: kind.beats
        ? {
            level: between(0.1, 0.4),
            cents: between(0.3, 2) * (random() < 0.5 ? -1 : 1),
            decay: between(0.4, 0.8),
          }
        : undefined,
      missing: kind.gaps ? [1 + Math.floor(5 * random()), 3 + Math.floor(9 * random())] : [],
      lowCut: kind.thin ? between(120, 180) : 0,
    };
    return { pluck, seed: 1000 + i, answer: heard(pluck, 1000 + i) };
  });
}

const shareOf = (all: readonly boolean[]): number => all.filter(Boolean).length / all.length;

/** What of a draw is further from the truth than it may be; nothing when all is well. */
function wrong({ pluck, answer }: Draw): string[] {
  const off = Math.abs(cents(answer.fundamental / pluck.fundamental));
  const b = Math.abs(answer.inharmonicity / pluck.inharmonicity - 1);
  const sure = answer.inharmonicityDoubt / answer.inharmonicity < 0.015;
  const said = JSON.stringify(pluck);
  return [
    ...(off > 0.3 ? [`f0 is ${off} cents off: ${said}`] : []),
    ...(sure && b > 0.03 ? [`B is ${100 * b} % off: ${said}`] : []),
  ];
}

/** How many times the least possible doubt is stated: of f0 and of B. */
function timesBound({ pluck, answer }: Draw): [number, number] {
  const least = bound(pluck);
  return [
    answer.fundamentalDoubt / pluck.fundamental / least.fundamental,
    answer.inharmonicityDoubt / least.inharmonicity,
  ];
}

const kinds: readonly (readonly [string, Kind])[] = [
  ['that ring alone', {}],
  ['with partials missing, through a small microphone', { gaps: true, thin: true }],
  ['whose two polarisations beat', { beats: true }],
  ['with all of it', { beats: true, gaps: true, thin: true }],
];

describe.each(kinds)('plucks %s, 1.5 s at 48 kHz', (_, kind) => {
  const all = draws(40, 7, kind);
  const times = all.map(timesBound);

  it(
    'are told to 0.3 cents, and B to 3 % where its doubt is below 1.5 %',
    { timeout: 60_000 },
    () => {
      expect(all.flatMap(wrong)).toEqual([]);
      expect(all.some(({ answer: a }) => a.inharmonicityDoubt < 0.015 * a.inharmonicity)).toBe(
        true,
      );
    },
  );

  it('have doubts within twice the bound of Cramer and Rao', () => {
    expect(Math.max(...times.flat())).toBeLessThan(2);
  });

  it('are no surer than anybody could be', () => {
    expect(Math.min(...times.flat())).toBeGreaterThan(0.6);
  });
});

describe.each([
  ['that ring alone', {}],
  ['with all of it', { beats: true, gaps: true, thin: true }],
] as const)('the doubts of 500 plucks %s', (_, kind: Kind) => {
  it('cover the truth in 60 to 76 of a hundred', { timeout: 120_000 }, () => {
    const all = draws(500, 21, kind, { sampleRate: 22_050, seconds: 0.9, most: 24 });
    const within = all.map(({ pluck, answer: a }) => [
      Math.abs(a.fundamental - pluck.fundamental) < a.fundamentalDoubt,
      Math.abs(a.inharmonicity - pluck.inharmonicity) < a.inharmonicityDoubt,
    ]);
    for (const share of [0, 1].map((i) => shareOf(within.map((w) => w[i] ?? false)))) {
      expect(share).toBeGreaterThan(0.6);
      expect(share).toBeLessThan(0.76);
    }
  });
});

describe('listen', () => {
  const open: Plucked = { fundamental: 110, inharmonicity: 5e-5 };

  it('numbers the partials rightly where the first three are missing', () => {
    const { partials } = heard({ ...open, missing: [1, 2, 3] }, 3);
    expect(partials[0]?.n).toBe(4);
    expect(partials[0]?.frequency).toBeCloseTo(4 * 110 * Math.sqrt(1 + 16 * 5e-5), 2);
  });

  it('leaves out a partial that stands where no law puts it', () => {
    const clean = sound({ ...open, missing: [5] }, 3);
    const astray = 5 * 110 * 1.004;
    const samples = clean.samples.map(
      (x, i) => x + 0.05 * Math.sin((2 * Math.PI * astray * i) / 48_000) * Math.exp(-i / 40_000),
    );
    const answer = listen({ samples, sampleRate: 48_000 });
    expect(answer.ok && answer.partials.some(({ n }) => n === 5)).toBe(false);
    expect(answer.ok && answer.inharmonicity / 5e-5).toBeCloseTo(1, 2);
  });

  it('gives levels in dB against full scale', () => {
    const [loud, soft] = [0.8, 0.08].map((peak) => heard({ ...open, peak, noise: 1e-5 }, 3));
    expect((loud?.partials[0]?.level ?? 0) - (soft?.partials[0]?.level ?? 0)).toBeCloseTo(20, 1);
  });

  it('takes the fundamental that it is told to look near', () => {
    const answer = listen({ ...sound(open, 3), near: 105 });
    expect(answer.ok && answer.fundamental).toBeCloseTo(110, 2);
  });

  it('waits for the pluck', () => {
    const { samples } = sound({ ...open, noise: 1e-4 }, 3);
    const late = new Float64Array(samples.length + 20_000);
    samples.forEach((x, i) => (late[i + 20_000] = x));
    const answer = listen({ samples: late, sampleRate: 48_000 });
    expect(answer.ok && answer.fundamental).toBeCloseTo(110, 3);
  });

  it('is as sure of a sound that stands off zero', () => {
    const pluck = sound({ fundamental: 31, inharmonicity: 2e-5, noise: 1e-5, peak: 0.5 }, 4);
    const doubts = [0, 0.3].map((offset) => {
      const answer = listen({ ...pluck, samples: pluck.samples.map((x) => x + offset) });
      return answer.ok ? answer.fundamentalDoubt : NaN;
    });
    expect((doubts[1] ?? NaN) / (doubts[0] ?? NaN)).toBeCloseTo(1, 1);
  });

  it('refuses arguments that no recording has', () => {
    const { samples } = sound(open);
    expect(() => listen({ samples, sampleRate: 800 })).toThrow(/^sampleRate is 800; permitted: /);
    expect(() => listen({ samples, sampleRate: 48_000, near: -1 })).toThrow(/^near is -1; /);
  });
});

describe('what is no plucked string', () => {
  const sampleRate = 48_000;
  const gauss = normal(generator(4));
  const hiss = Float64Array.from({ length: 1.5 * sampleRate }, () => 0.1 * gauss());
  const pluck = (p: Partial<Plucked> = {}, seed = 3) =>
    sound({ fundamental: 110, inharmonicity: 5e-5, ...p }, seed).samples;
  const reason = (samples: Float64Array) => {
    const answer = listen({ samples, sampleRate });
    return answer.ok ? `heard ${answer.fundamental} Hz` : answer.reason;
  };
  /** Two sounds at once, the second `times` as loud. */
  const both = (a: Float64Array, b: Float64Array, times: number) =>
    a.map((x, i) => 0.5 * (x + times * (b[i] ?? 0)));

  it('is refused as silence', () => {
    expect(reason(new Float64Array(sampleRate))).toBe('silence');
    expect(reason(hiss.map((x) => 5e-4 * x))).toBe('silence');
    expect(reason(pluck({ noise: 1e-5 }).map((x) => 0.01 * x))).toMatch(
      /^heard 110\.0|^heard 109\.99/,
    );
  });

  it('is refused as noise: hiss, rumble, a knock', () => {
    expect(reason(hiss)).toBe('noise');
    let rumble = 0;
    expect(reason(hiss.map((x) => (rumble = 0.995 * rumble + 0.1 * x)))).toBe('noise');
    expect(reason(hiss.map((x, i) => x * Math.exp(-i / 2000)))).toBe('noise');
  });

  it('is refused for clipping, at full scale or below it, and not for a low pure sound of few steps', () => {
    expect(reason(pluck({ peak: 3 }).map((x) => Math.max(-1, Math.min(1, x))))).toBe('clipping');
    const cut = pluck({ peak: 2 }).map((x) => Math.max(-0.7, Math.min(0.7, x)));
    expect(reason(cut.map((x) => Math.round(x * 32_767) / 32_768))).toBe('clipping');
    const low = pluck({ fundamental: 31, most: 5, noise: 0 });
    expect(reason(low.map((x) => Math.round(x * 32_767) / 32_768))).toMatch(
      /^heard 31\.00|^heard 30\.99/,
    );
  });

  it.each([
    ['a fourth', 330, 440.1, 0.3],
    ['a fifth in tune', 82.4, 123.6, 1],
    ['a fourth in tune, the lower soft', 329.6, 247.2, 0.3],
    ['two of a course, 12 cents apart', 329.6, 332, 0.5],
    ['a bass and its neighbour', 41.2, 55, 1],
    ['a second string 20 dB down', 196, 261.6, 0.1],
  ])('is refused for two strings at once: %s', (_, one, other, times) => {
    const second = pluck({ fundamental: other, inharmonicity: 6e-5 }, 4);
    expect(reason(both(pluck({ fundamental: one }), second, times))).toBe('two strings');
  });

  it('is refused as too short: in seconds, or in vibrations', () => {
    expect(reason(pluck({ seconds: 0.12 }))).toBe('too short');
    expect(reason(pluck({ fundamental: 31, seconds: 0.3 }))).toBe('too short');
    expect(reason(pluck({ seconds: 0.4 }))).toMatch(/^heard/);
  });

  it('is refused for too few partials: three, and one', () => {
    expect(reason(pluck({ most: 3 }))).toBe('too few partials');
    expect(reason(hiss.map((x, i) => 0.5 * Math.sin(0.05 * i) + 0.01 * x))).toBe(
      'too few partials',
    );
    expect(reason(pluck({ most: 5 }))).toMatch(/^heard/);
  });
});
