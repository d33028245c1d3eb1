/** Exercises of the chapter "Wound strings". */
import { constructionOf } from '../../instrument/drawer.ts';
import { formatForce, formatShare } from '../../instrument/format.ts';
import { formatThickness } from '../../instrument/thickness-text.ts';
import type { State } from '../../instrument/schema.ts';
import { remade, woundInHand, type WoundPull } from '../../instrument/wound-in-hand.ts';
import {
  coreArea,
  linearDensity,
  material,
  seatDiameter,
  thousandths,
  type MaterialId,
  type WoundString,
} from '../../physics/index.ts';
import type { Answers } from '../types.ts';

const inHand = (state: State): WoundPull => woundInHand(state).pull;
const coreOf = (state: State): WoundString['core'] => inHand(state).construction.core;
const densityOf = (state: State): number => material(coreOf(state).material).density.value;
const coreMass = (state: State): number => densityOf(state) * coreArea(inHand(state).construction);
const wrapShare = (state: State): number => 1 - coreMass(state) / inHand(state).linearDensity;

/** Gauge in thousandths of a plain wire as heavy as a round rod of so many kg/m. */
const plainFor = (state: State, density: number): number =>
  thousandths(Math.sqrt((4 * density) / (Math.PI * densityOf(state))));

/** The string with its core so many times as thick, at the same gauge. */
function cored(state: State, factor: number): WoundPull {
  const pull = inHand(state);
  const { construction } = pull;
  const core = { ...construction.core, diameter: construction.core.diameter * factor };
  return remade(pull, { ...construction, core });
}
const coreText = (state: State, factor: number): string =>
  `The one with a core of ${formatThickness(thousandths(cored(state, factor).construction.core.diameter), state.units)}`;

const wrapped = (wrap: MaterialId): WoundString => {
  const own = constructionOf({ kind: 'wound', gauge: 46 });
  if (own.kind !== 'wound')
    throw new RangeError('gauge is 46; permitted: a wound gauge of the drawer');
  return { ...own, wraps: [{ material: wrap }] };
};
const item = (wrap: MaterialId, label: string) => ({
  id: wrap,
  label,
  value: linearDensity(wrapped(wrap)),
});

export const answers: Answers = {
  'wound.core': {
    kind: 'numeric',
    quantity: 'density',
    answer: coreMass,
    tolerance: 0.01,
    mistakes: [
      {
        value: (state) => (densityOf(state) * Math.PI * coreOf(state).diameter ** 2) / 4,
        hint: 'That’s a round wire. A hexagon’s corners stand out from the circle between its flats.',
      },
      {
        value: (state) => (densityOf(state) * Math.PI * seatDiameter(coreOf(state)) ** 2) / 4,
        hint: 'That’s the circle through the corners. The hexagon lies inside it.',
      },
      {
        value: (state) => densityOf(state) * coreOf(state).diameter ** 2,
        hint: 'That’s a square. The area of a hexagon is the square of its flats, times half the root of three.',
      },
    ],
  },
  'wound.plain': {
    kind: 'numeric',
    quantity: 'thickness',
    answer: (state) => plainFor(state, inHand(state).linearDensity),
    tolerance: 0.01,
    mistakes: [
      {
        value: (state) => thousandths(inHand(state).construction.diameter),
        hint: 'That’s the string’s own gauge. A solid wire of that gauge would be heavier: there is air between the turns.',
      },
      {
        value: (state) => {
          const { construction, linearDensity: density } = inHand(state);
          const solid = (densityOf(state) * Math.PI * construction.diameter ** 2) / 4;
          return (thousandths(construction.diameter) * density) / solid;
        },
        hint: 'You scaled the gauge by the ratio of the masses. The mass grows with the square of the gauge, so take a root.',
      },
      {
        value: (state) => plainFor(state, inHand(state).linearDensity) / 2,
        hint: 'That’s the radius. A gauge is a diameter.',
      },
    ],
  },
  'wound.stress': {
    kind: 'choose',
    options: (state) => [
      { id: 'thin', label: coreText(state, 0.9) },
      { id: 'thick', label: coreText(state, 1.1) },
      { id: 'same', label: 'Both the same: they have one gauge and pull about the same' },
    ],
    answer: (state) => {
      // A thinner wire is a little stronger, and its stress much higher: the stress decides.
      const stress = (factor: number): number =>
        cored(state, factor).tension / coreArea(cored(state, factor).construction);
      return stress(0.9) > stress(1.1) ? 'thin' : 'thick';
    },
    hints: (_, id) =>
      ({
        thick:
          'A thicker core spreads the same pull over a larger area. Is it then nearer to breaking?',
        same: 'They pull about the same. But on how much steel?',
      })[id],
  },
  'wound.order': {
    kind: 'order',
    items: () => [
      item('stainless430', 'wrapped with stainless steel, grade 430'),
      item('nickelPlatedSteel', 'wrapped with nickel-plated steel'),
      item('bronze8020', 'wrapped with 80/20 bronze'),
      item('nickel', 'wrapped with pure nickel'),
    ],
    ends: ['lightest', 'heaviest'],
    hint: 'Core and gauge are the same, so only the metal of the wrap differs. Which is densest?',
  },
  'wound.sheet': {
    kind: 'mistake',
    lines: (state) => [
      `The string pulls ${formatForce(inHand(state).tension, state.units)}.`,
      `Of its mass, ${formatShare(wrapShare(state))} is wrap and ${formatShare(1 - wrapShare(state))} core.`,
      `So the wrap carries ${formatShare(wrapShare(state))} of the pull.`,
      'The stress in the core is the pull it carries, divided by its area.',
      'Whether it holds depends on that stress, against the strength of its wire.',
    ],
    wrong: 2,
    hints: [
      'It follows from unit weight, length and note, as for any string.',
      'The derivation adds the two up.',
      undefined,
      'That’s what stress is.',
      'The standard lists the strength by the diameter of the wire.',
    ],
    right: () =>
      'The wrap carries next to none of the pull: a tight coil gives like a spring. The core carries all of it.',
  },
};
