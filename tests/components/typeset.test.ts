import { describe, expect, it } from 'vitest';
import { typeset } from '../../src/components/typeset.ts';

const values: Record<string, string> = { 'eq.L': '0.6477', 'eq.T': '72.5', 'a.name': 'A & <B>' };

function text(key: string): string {
  const value = values[key];
  if (value === undefined) throw new RangeError(`no ${key}`);
  return value;
}

const mathml = (html: string) => html.slice(0, html.indexOf('</math>'));
const visible = (html: string) => html.slice(html.indexOf('</math>'));
const live = (html: string) =>
  [...html.matchAll(/data-live="([^"]+)"[^>]*>([^<]*)</g)].map(([, key, value]) => [key, value]);

describe('typeset()', () => {
  const law = String.raw`T = \mu (2 \times \live{eq.L} f)^2 = \live{eq.T}\ \mathrm{N}`;

  it('puts the same live numbers, in the same order, into the visible tree and the MathML', () => {
    const html = typeset(law, { text });
    expect(live(visible(html))).toEqual([
      ['eq.L', '0.6477'],
      ['eq.T', '72.5'],
    ]);
    expect(live(mathml(html))).toEqual(live(visible(html)));
  });

  it('leaves no sentinel and no stale TeX source behind', () => {
    const html = typeset(law, { text, display: true });
    expect(html).not.toMatch(/9000\d\d/);
    expect(html).not.toContain('annotation encoding');
  });

  it('lets one quantity stand in an equation twice', () => {
    const html = typeset(String.raw`\frac{\live{eq.L}}{\sqrt{\live{eq.L}}} 12`, { text });
    expect(live(visible(html))).toHaveLength(2);
    expect(live(mathml(html))).toHaveLength(2);
  });

  it('refuses a live number that touches other digits', () => {
    expect(() => typeset(String.raw`2\live{eq.T}`, { text })).toThrow('stand apart');
    expect(() => typeset(String.raw`2 \times \live{eq.T}`, { text })).not.toThrow();
  });

  it('holds room for the digits shown, or for as many as the author reserves', () => {
    expect(visible(typeset(String.raw`\live{eq.T}`, { text }))).toContain('min-width:3.5ch');
    expect(visible(typeset(String.raw`\live[6]{eq.T}`, { text }))).toContain('min-width:6ch');
  });

  it('escapes what a reader may have typed', () => {
    const html = typeset(String.raw`\live{a.name}`, { text });
    expect(live(visible(html))).toEqual([['a.name', 'A &amp; &lt;B&gt;']]);
    expect(live(mathml(html))).toEqual([['a.name', 'A &amp; &lt;B&gt;']]);
  });

  it('throws on a quantity that does not exist', () => {
    expect(() => typeset(String.raw`\live{eq.X}`, { text })).toThrow('no eq.X');
  });

  it('throws on wrong TeX', () => {
    expect(() => typeset(String.raw`\frac{1`, { text })).toThrow(/KaTeX parse error/);
  });

  it('refuses an equation whose own digits look like a sentinel', () => {
    expect(() => typeset(String.raw`900001 + \live{eq.T}`, { text })).toThrow(RangeError);
  });
});
