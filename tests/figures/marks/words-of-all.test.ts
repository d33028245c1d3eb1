/** Every figure, for three instruments in each of the units: what is said of it, and what its controls are called. */
import type { Element } from 'hast';
import { describe, expect, test } from 'vitest';

import { initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';
import type { Units } from '../../../src/instrument/schema.ts';
import { figures } from './all-figures.ts';
import { all, attribute, drawnWith, numberOf, textOf, type Drawn } from './drawn.ts';

test('all figures are found', () => {
  expect(figures.length).toBeGreaterThanOrEqual(33);
});

const foreign: Readonly<Record<Units, RegExp>> = {
  'in-lb': /\d[\s\u00a0](?:mm|N|kg)(?![\p{L}/])|\b(?:N|kg) hung/u,
  'mm-N': /\d[\s\u00a0](?:lb|kg)(?![\p{L}/])|\b(?:lb|kg) hung|\d[\s\u00a0]in$/u,
  'mm-kg': /\d[\s\u00a0](?:lb|N)(?![\p{L}/])|\b(?:lb|N) hung|\d[\s\u00a0]in$/u,
};

const lettering = ({ root }: Drawn): string[] => [
  ...all(root, (e) => e.tagName === 'text').map(textOf),
  ...all(root, () => true).flatMap((e) =>
    ['ariaLabel', 'ariaValueText'].map((name) => attribute(e, name)).filter(Boolean),
  ),
];

const isControl = (e: Element): boolean =>
  ['button', 'input', 'select', 'textarea'].includes(e.tagName) ||
  attribute(e, 'role') === 'slider';

function nameOf(control: Element, { root }: Drawn): string {
  const id = attribute(control, 'id');
  const label = all(root, (e) => e.tagName === 'label').find(
    (e) => (id && attribute(e, 'htmlFor') === id) || all(e, (x) => x === control).length > 0,
  );
  const by = attribute(control, 'ariaLabelledBy');
  const elsewhere = by && all(root, (e) => attribute(e, 'id') === by)[0];
  return (
    attribute(control, 'ariaLabel') ||
    (elsewhere ? textOf(elsewhere) : '') ||
    (label ? textOf(label) : '') ||
    (control.tagName === 'button' ? textOf(control) : '')
  ).trim();
}

/** Reads in both units at once to who reads in thousandths: the mm beside them lead to the area. */
const IN_BOTH = 'TheCaliper';

/** Wires that are named as they are sold, or as a source has them, and are no string of the reader's. */
const named = new Set(['FivePulls', 'TuneUp', 'Bell', 'RecordedString']);
/** No gauge of a workshop's string is as odd as these: whoever reads in mm meets them nowhere. */
const odd = [10.37, 13.73, 17.37, 26.73, 36.37, 46.73];
const strange = {
  ...workshopInstrument('redshank'),
  strings: workshopInstrument('redshank').strings.map((each, i) => ({
    ...each,
    gauge: odd[i] ?? each.gauge,
  })),
};

const broken = /\b(?:NaN|undefined|Infinity|null)\b|\[object/;

describe.each(figures)('%s', (name, figure) => {
  describe.each(['redshank', 'godwit', 'avocet'])('of %s', (id) => {
    const mine = workshopInstrument(id);
    const tried = { string: mine.strings.length - 1, length: mine.scale.treble * 1.03 };
    test.each(['in-lb', 'mm-N', 'mm-kg'] as const)('in %s', (units) => {
      for (const trial of [initialState.trial, tried]) {
        const found = drawnWith({ ...initialState, mine, units, trial }, figure);
        const controls = all(found.root, isControl);
        expect(found.html.replace(/<!--.*?-->/gs, '').match(broken)?.[0]).toBeUndefined();
        if (name !== IN_BOTH || units !== 'in-lb')
          for (const text of lettering(found)) expect(text).not.toMatch(foreign[units]);
        for (const control of controls) {
          expect(nameOf(control, found), attribute(control, 'className')).not.toBe('');
          if (attribute(control, 'role') !== 'slider') continue;
          expect(attribute(control, 'ariaValueText')).toMatch(/\S/);
          const [min, now, max] = ['ariaValueMin', 'ariaValueNow', 'ariaValueMax'].map((name) =>
            numberOf(control, name),
          );
          expect(now).toBeGreaterThanOrEqual(min ?? NaN);
          expect(now).toBeLessThanOrEqual(max ?? NaN);
        }
        // What a drawing shows is said in words, unless it is there for the eye alone.
        for (const image of all(found.root, (e) => attribute(e, 'role') === 'img'))
          expect(attribute(image, 'ariaLabel').length).toBeGreaterThan(20);
      }
    });
  });
});

test.each(figures.filter(([name]) => !named.has(name)))(
  '%s tells gauges in mm to who reads in mm',
  (_, figure) => {
    for (const string of odd.keys())
      for (const units of ['mm-N', 'mm-kg'] as const) {
        const state = { ...initialState, mine: strange, units, trial: { string } };
        const found = drawnWith(state, figure);
        const texts = [...lettering(found), textOf(found.root).replace(/\s+/g, ' ')];
        for (const text of texts) {
          expect(text).not.toMatch(/thousandth/);
          for (const gauge of odd)
            expect(text).not.toMatch(new RegExp(`(?<![\\d.])${gauge}(?!\\d)`));
        }
      }
  },
);
