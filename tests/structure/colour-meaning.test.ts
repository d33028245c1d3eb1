/**
 * In a drawing red is what moves, or follows what moves, and nothing else; green is the felt band and nothing else. Colours reach a
 * drawing by its tokens alone, so the classes that take them say what they mean.
 */
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const src = join(import.meta.dirname, '../../src');
const read = (file: string): string => readFileSync(join(src, file), 'utf8');

/** Drawings: the figures, and what they share. A form's and a list's own colours are none. */
const drawings = [
  ...globSync('figures/{pull,feel,choosing,consequences,labs,kit}/**/*.svelte', { cwd: src }),
  ...['styles/drawing.css', 'styles/figure-parts.css', 'figures/labs/kit/plot.css'],
];
/** Drawings that nothing can be dragged in */
const still = [
  ...globSync('components/{figures,setups}/*.astro', { cwd: src }),
  ...['components/LabSetup.astro', 'components/Scene.astro'],
];

interface Rule {
  readonly where: string;
  readonly selector: string;
  readonly body: string;
}

const stylesOf = (file: string): string =>
  file.endsWith('.css')
    ? read(file)
    : [...read(file).matchAll(/<style[^>]*>([^]*?)<\/style>/g)].map(([, css]) => css).join('\n');

const rulesOf = (files: readonly string[]): Rule[] =>
  files.flatMap((file) =>
    [
      ...stylesOf(file)
        .replace(/\/\*[^]*?\*\//g, '')
        .matchAll(/([^{};]+)\{([^{}]*)\}/g),
    ].flatMap(([, selectors = '', body = '']) =>
      selectors
        .split(/,(?![^(]*\))/)
        .map((selector) => ({ where: `${file}: ${selector.trim()}`, selector, body })),
    ),
  );

const takes = (token: string) => (rule: Rule) => new RegExp(`var\\(--${token}\\b`).test(rule.body);
const names = ({ selector }: Rule): string[] =>
  [...selector.replace(/:not\([^)]*\)/g, '').matchAll(/\.([\w-]+)/g)].map(([, name = '']) => name);
const where = (rules: readonly Rule[]): string[] => rules.map((rule) => rule.where);

/** What the instrument is, whatever is dragged, and what a drawing is ruled with */
const stays = new Set(
  [
    ['nut', 'frets', 'board', 'wood', 'neck', 'dots', 'bridge', 'anchor', 'post', 'jaw', 'body'],
    ['axis', 'grid', 'tick', 'ticks', 'rule', 'scale', 'ruler', 'rail', 'comb', 'tooth', 'edge'],
    ['ink', 'soft', 'old', 'ghost', 'rest', 'known', 'before', 'even', 'label', 'words', 'given'],
  ].flat(),
);
/** What stands for the felt band: its field, its lines, what lies in it, and the same on a map and in its key */
const band = new Set(
  [
    ['band', 'felt', 'strip', 'inner', 'outer', 'wide', 'range', 'zone', 'mean', 'carried'],
    ['within', 'average', 'swatch', 'key'],
  ].flat(),
);
/** Where a band is its own drawing, it has no class. */
const isField = ({ where: place }: Rule): boolean => /bench\/strings|kit\/FeltHatch/.test(place);

/** The square's strips are no band: they are what a drag adds. The class's mean is what it measured. */
const others = new Set(['pull/the-square/TheSquare.svelte', 'labs/class/Dots.svelte']);
const isOther = ({ where: place }: Rule): boolean =>
  [...others].some((file) => place.startsWith(`figures/${file}`));

const rules = rulesOf(drawings);
const red = rules.filter(takes('pencil'));
const green = rules.filter(takes('felt'));

describe('in the drawings', () => {
  it('there is red and green at all, and each is looked at', () => {
    expect(red.length).toBeGreaterThan(150);
    expect(green.length).toBeGreaterThan(15);
  });

  it('nothing is red that stays where it is', () => {
    expect(where(red.filter((rule) => names(rule).some((name) => stays.has(name))))).toEqual([]);
  });

  it('nothing of the felt band is red', () => {
    const found = red.filter(
      (rule) => !isOther(rule) && names(rule).some((name) => band.has(name)),
    );
    expect(where(found)).toEqual([]);
  });

  it('nothing is green but the felt band', () => {
    const found = green.filter(
      (rule) => !isField(rule) && !names(rule).some((name) => band.has(name)),
    );
    expect(where(found)).toEqual([]);
  });

  it('nothing is both', () => {
    expect(where(red.filter(takes('felt')))).toEqual([]);
  });

  it('every colour is a token', () => {
    const found = [...rules, ...rulesOf(still)].filter(({ body }) =>
      /#[\da-f]{3,8}\b|\b(rgb|hsl|oklch|lab)a?\(|:\s*(red|green|crimson|tomato|brown|lime|orange)\b/i.test(
        body.replace(/mask[\w-]*:[^;]*/g, '').replace(/url\([^)]*\)/g, ''),
      ),
    );
    expect(where(found)).toEqual([]);
    const inMarkup = [...drawings, ...still].filter((file) =>
      /\b(fill|stroke)="(?!none|currentColor|url|context-|var\(|\{)[^"]+"/.test(
        read(file).replace(/<style[^]*?<\/style>/g, ''),
      ),
    );
    expect(inMarkup).toEqual([]);
  });
});

it('a drawing in which nothing can be dragged has no red', () => {
  expect(still.length).toBeGreaterThan(30);
  expect(where(rulesOf(still).filter(takes('pencil')))).toEqual([]);
});

/** Hue in degrees and how colourful, 0 to 255 */
function hueOf(hex: string): { hue: number; chroma: number } {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const most = Math.max(r, g, b);
  const chroma = most - Math.min(r, g, b);
  if (chroma === 0) return { hue: 0, chroma };
  const sixth =
    most === r
      ? ((g - b) / chroma + 6) % 6
      : most === g
        ? (b - r) / chroma + 2
        : (r - g) / chroma + 4;
  return { hue: 60 * sixth, chroma };
}

describe('of the colours', () => {
  const colours = [
    ...read('styles/tokens.css').matchAll(/--([\w-]+): light-dark\((#\w{6}), (#\w{6})\)/g),
  ].flatMap(([, name = '', ...both]) => both.map((hex) => ({ name, hex, ...hueOf(hex) })));
  // Papers and inks are hardly coloured, or warm and dark as wood is.
  const isRed = ({ hue, chroma }: { hue: number; chroma: number }) =>
    chroma > 60 && (hue < 30 || hue > 340);
  const isGreen = ({ hue, chroma }: { hue: number; chroma: number }) =>
    chroma > 20 && hue > 75 && hue < 185;

  it('only the pencil is red, in both schemes and with more contrast', () => {
    expect(new Set(colours.filter(isRed).map(({ name }) => name))).toEqual(new Set(['pencil']));
    expect(colours.filter(({ name }) => name === 'pencil').filter((each) => !isRed(each))).toEqual(
      [],
    );
  });

  it('only the felt is green', () => {
    expect(new Set(colours.filter(isGreen).map(({ name }) => name))).toEqual(
      new Set(['felt', 'felt-edge']),
    );
    const felt = colours.filter(({ name }) => name.startsWith('felt'));
    expect(felt.filter((each) => !isGreen(each))).toEqual([]);
  });
});
