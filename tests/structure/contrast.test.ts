import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

type Rgb = readonly [number, number, number];
type Scheme = 'light' | 'dark';

const css = readFileSync(new URL('../../src/styles/tokens.css', import.meta.url), 'utf8');

function hex(colour: string): Rgb {
  const [, r, g, b] = /^#(..)(..)(..)$/.exec(colour) ?? [];
  if (!r || !g || !b) throw new Error(`not a six-digit colour: ${colour}`);
  return [parseInt(r, 16), parseInt(g, 16), parseInt(b, 16)];
}

type Tokens = ReadonlyMap<string, Readonly<Record<Scheme, Rgb>>>;
const tokensIn = (text: string): Tokens =>
  new Map(
    [...text.matchAll(/--([\w-]+): light-dark\((#\w{6}), (#\w{6})\)/g)].map(
      ([, name, light, dark]) => [name ?? '', { light: hex(light ?? ''), dark: hex(dark ?? '') }],
    ),
  );

/** What stands in the block of those who ask for more contrast, and what stands before it. */
const [before = '', more = ''] = css.split('@media (prefers-contrast: more) {');
const tokens = tokensIn(before);
const moreTokens = new Map([...tokens, ...tokensIn(more)]);

function colour(name: string, scheme: Scheme, from = tokens): Rgb {
  const token = from.get(name);
  if (!token) throw new Error(`tokens.css has no colour --${name}`);
  return token[scheme];
}

/** Relative luminance of sRGB, WCAG 2.2. */
function luminance(rgb: Rgb): number {
  const [r, g, b] = rgb.map((v) => {
    const c = v / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: Rgb, b: Rgb): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

const grounds = ['paper', 'sheet', 'wood', 'felt', 'pencil-wash'];
const lettering = ['ink', 'ink-soft', 'pencil'];
const graphics = ['edge', 'felt-edge', 'focus'];
const schemes: Scheme[] = ['light', 'dark'];

describe('contrast()', () => {
  it('is 21 between black and white and 1 between equals', () => {
    expect(contrast(hex('#000000'), hex('#ffffff'))).toBeCloseTo(21, 6);
    expect(contrast(hex('#a83a17'), hex('#a83a17'))).toBe(1);
  });
});

describe.each(schemes)('the %s colours', (scheme) => {
  const pairs = (front: string[]) => front.flatMap((f) => grounds.map((g) => [f, g] as const));

  it.each(pairs(lettering))('let %s be read on %s', (front, ground) => {
    expect(contrast(colour(front, scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(pairs(graphics))('let %s be seen on %s', (front, ground) => {
    expect(contrast(colour(front, scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(3);
  });

  it.each(['paper', 'sheet'])('let the felt band’s fill be told from %s', (ground) => {
    expect(contrast(colour('felt', scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(1.25);
  });

  it.each(['ink', 'pencil'])('let ink-on be read on %s', (ground) => {
    expect(contrast(colour('ink-on', scheme), colour(ground, scheme))).toBeGreaterThanOrEqual(4.5);
  });
});

describe.each(schemes)('the %s colours for who asks for more contrast', (scheme) => {
  const ratio = (front: string, ground: string) =>
    contrast(colour(front, scheme, moreTokens), colour(ground, scheme, moreTokens));
  const pairs = (front: string[]) => front.flatMap((f) => grounds.map((g) => [f, g] as const));

  it('stand in a block of their own', () => {
    expect([...tokensIn(more).keys()]).toEqual(expect.arrayContaining([...lettering, ...graphics]));
  });

  // WCAG 2.2, 1.4.6 (AAA) for text; lines get what text usually gets.
  it.each(pairs(lettering))('let %s be read on %s with 7 to 1', (front, ground) => {
    expect(ratio(front, ground)).toBeGreaterThanOrEqual(7);
  });

  it.each(pairs([...graphics, 'line']))('let %s be seen on %s with 4.5 to 1', (front, ground) => {
    expect(ratio(front, ground)).toBeGreaterThanOrEqual(4.5);
  });
});
