/**
 * What every handle is called, what it says of its value, with its unit, and the field in which the same can be typed. A figure's
 * handle that is not in this table fails: its words are written here too, so that somebody has read them.
 */
import type { Component } from 'svelte';
import { describe, expect, test } from 'vitest';

import LengthTwin from '../../../src/figures/pull/monochord/LengthTwin.svelte';
import {
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
  formatTotal,
  gaugeNumber,
  lengthUnit,
  spokenGauge,
  spokenNote,
  travelNumber,
} from '../../../src/instrument/format.ts';
import {
  formatThickness,
  thicknessNumber,
  thicknessUnit,
} from '../../../src/instrument/thickness-text.ts';
import { boardOf } from '../../../src/instrument/board.ts';
import { bestSaddle, intoned, usualHeight } from '../../../src/instrument/intoned.ts';
import { lowString } from '../../../src/instrument/low-string.ts';
import { compared } from '../../../src/instrument/pair.ts';
import { pullsOf, totalPull, type Pull } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import type { State, Units } from '../../../src/instrument/schema.ts';
import { woundInHand } from '../../../src/instrument/wound-in-hand.ts';
import { fromInches, thousandths } from '../../../src/physics/index.ts';
import { gripRow } from '../../../src/figures/choosing/rule-map/own-rule.ts';
import { ruleMapOf } from '../../../src/figures/choosing/rule-map/rule-map.ts';
import { drawnWith } from './drawn.ts';
import { fieldsOf, knobsOf, type Knob } from './sheet.ts';
import { stateOf, three, withUnits } from './states.ts';

/** A state, the string in hand on it, and how its units write a length. */
interface Seen {
  readonly state: State;
  readonly own: Pull;
  readonly length: (metres: number) => string;
  readonly travel: (metres: number) => string;
  readonly small: (metres: number) => string;
}
interface Words {
  readonly label: string | ((seen: Seen) => string);
  readonly says: string | RegExp | ((seen: Seen) => string | RegExp);
  /** The field that takes the same; a number in the prose is its own. What it shows is what the handle says, unless `shows` it otherwise. */
  readonly typed?: string | ((seen: Seen) => string);
  readonly shows?: string | RegExp | ((seen: Seen) => string | RegExp);
  readonly upright?: true;
  /** A handle that goes round or both ways has no orientation */
  readonly free?: true;
  /** Where not every instrument has it */
  readonly when?: (seen: Seen) => boolean;
}

const length: Words = {
  label: 'Speaking length',
  says: ({ own, length }) => length(own.speakingLength),
  typed: 'Length',
};
const ofScale = ({ state, length }: Seen): string => length(state.mine.scale.treble);
/** The home page proposes an inch more, or 25 mm. */
const ofProposed = ({ state, length }: Seen): string =>
  length(state.mine.scale.treble + (state.units === 'in-lb' ? 0.0254 : 0.025));
const scale: Words = { label: 'Speaking length', says: ofScale, typed: 'Speaking length' };
const note: Words = {
  label: 'Pitch',
  says: ({ own }) => formatNote(own.note),
  typed: 'Pitch',
  upright: true,
};
const gauge: Words = {
  label: 'Gauge',
  says: ({ state, own }) => spokenGauge(own.gauge, state.units),
  typed: 'Gauge',
  shows: ({ state, own }) => formatGauge(own.gauge, state.units),
};
const bentTravel = ({ state, own, travel }: Seen): string => {
  const { fret, rise } = state.bend;
  const pushed = pushedTo(own, fret, rise);
  return travel(pushed?.travel ?? NaN);
};
const withCents = (seen: Seen): string => `${bentTravel(seen)}, ${seen.state.bend.rise}\u00a0cents`;
const wound = ({ state }: Seen) => woundInHand(state).pull.construction;
const outer = (seen: Seen): string =>
  gaugeNumber(Math.round(thousandths(wound(seen).diameter)), seen.state.units);
const sides: readonly Words[] = [
  { label: 'The square fret', says: 'fret 7', typed: 'Square at fret', shows: '7' },
  {
    label: 'Length of the treble side',
    says: ({ state, length }) => length(boardOf(state).treble),
    typed: 'Treble side',
  },
  {
    label: 'Length of the bass side',
    says: ({ state, length }) => length(boardOf(state).bass),
    typed: 'Bass side',
  },
];
const pair = (mine: string, other: string): readonly Words[] => [
  {
    label: 'Scale length, feels right',
    says: ofScale,
    ...(mine && { typed: ({ state }) => `${mine}${state.mine.name}` }),
  },
  {
    label: 'Scale length, to be strung',
    says: ({ state, length }) => length((mine ? compared(state).other : state.other).scale.treble),
    ...(other && { typed: other }),
  },
];

const table: Readonly<Record<string, readonly Words[]>> = {
  Monochord: [{ ...scale, says: ofProposed, upright: true }],
  TheNeck: [scale, scale],
  DragSaddle: [{ label: 'Scale length tried', says: ofScale }],
  TheSquare: [{ ...scale, label: 'Side of the square, the speaking length' }],
  ThreeHandles: [length, note, gauge, length, note, gauge],
  DragLength: [{ label: 'Speaking length', says: length.says }],
  DragNote: [{ label: 'Pitch', says: note.says }],
  DragGauge: [{ label: 'Gauge', says: gauge.says }],
  DragReference: [{ label: 'Reference A4', says: '440.0\u00a0Hz' }],
  SlideRule: [{ label: 'Hairline', says: 'times 0.50', typed: 'Each times', shows: '0.50' }],
  TheCaliper: [
    {
      label: 'Diameter',
      says: ({ state }) =>
        state.units === 'in-lb' ? /^1\d\.0 thousandths$/ : /^0\.\d{3}\u00a0mm$/,
      typed: 'Diameter',
      shows: ({ state }) => (state.units === 'in-lb' ? /^0\.01\d0\u00a0in$/ : /^0\.\d{3}\u00a0mm$/),
    },
  ],
  TheCapo: [{ label: 'Capo', says: 'capo at fret 2', typed: 'Capo at fret', shows: '2' }],
  TheOctave: [0, 1].map((): Words => ({
    label: 'Pitch',
    says: ({ own }) => `${formatNote(own.note)}, its own note`,
    typed: 'Pitch',
    shows: ({ own }) => formatNote(own.note),
  })),
  TheSection: [
    {
      label: 'Core diameter',
      says: (seen) => formatThickness(thousandths(wound(seen).core.diameter), seen.state.units),
      typed: 'Core',
      shows: (seen) => thicknessNumber(thousandths(wound(seen).core.diameter), seen.state.units),
    },
    {
      label: 'Diameter over the wrap',
      says: (seen) => `${outer(seen)} ${thicknessUnit(seen.state.units)}`,
      typed: 'Over the wrap',
      shows: (seen) => outer(seen),
    },
  ],
  TheStairs: [
    {
      label: 'Wanted pull',
      says: ({ state, own }) => formatForce(own.tension, state.units),
      typed: 'Wanted pull',
      upright: true,
    },
  ],
  TheVice: [{ label: 'Free length', says: ({ length }) => length(0.07), typed: 'Free length' }],
  Bending: [
    { label: 'Fret of the bend', says: 'fret 12', typed: 'Fret', shows: '12' },
    {
      label: 'Travel of the finger',
      says: withCents,
      typed: 'Travel',
      shows: bentTravel,
      upright: true,
    },
    { label: 'Fret of the bend', says: 'fret 12', typed: 'Fret', shows: '12' },
    {
      label: 'Travel of the finger',
      says: withCents,
      typed: 'Travel',
      shows: bentTravel,
      upright: true,
    },
  ],
  DragFret: [{ label: 'Fret of the bend', says: '12' }],
  DragRise: [{ label: 'Rise of the bend', says: '200\u00a0cents' }],
  FingersPlace: [
    {
      label: 'From the nut to the finger',
      says: ({ state, own, length }) =>
        `${length(own.speakingLength / 2)}, ${formatForce((0.004 * own.tension) / own.speakingLength, state.units)}`,
      typed: 'From the nut',
      shows: ({ own, length }) => length(own.speakingLength / 2),
    },
  ],
  FiveGauges: [
    {
      label: 'Travel of all five',
      says: withCents,
      typed: 'Travel',
      shows: bentTravel,
      upright: true,
    },
  ],
  Ladder: [
    ...[0, 1].flatMap((): Words[] => [
      {
        label: 'Partial under the lens',
        says: /^10, [\d.]+\u00a0cents high$/,
        typed: 'Partial',
        shows: '10',
        upright: true,
      },
      length,
      gauge,
    ]),
  ],
  RecordedString: [
    {
      label: 'Gauge of the model’s wire',
      says: /^12 thousandths, B [\d.]+\u00a0millionths$/,
      typed: 'Gauge',
      shows: '12',
    },
  ],
  SaddleCurve: [gauge],
  ThreeRulers: [
    ...[0, 1].flatMap((): Words[] => [
      {
        label: 'Travel of the first finger',
        says: ({ state, own, travel }) =>
          `${travel(pushedTo(own, state.bend.fret, state.bend.rise)?.travel ?? NaN)}, 200\u00a0cents`,
        typed: 'Rise, in cents',
        shows: '200',
        upright: true,
      },
      {
        label: 'Scale of the second instrument',
        says: ({ state, length }) => length(compared(state).other.scale.treble),
        typed: 'Second scale',
      },
      {
        label: 'Gauge of the second string',
        says: ({ state }) =>
          state.units === 'in-lb'
            ? /^\d+\.\d thousandths, pulling exactly the same$/
            : /^\d\.\d\d mm, pulling exactly the same$/,
        typed: 'Second gauge',
        shows: /^\d+\.\d{1,2}$/,
      },
    ]),
  ],
  WholeString: [
    {
      label: 'From the nut to the tuner’s post',
      says: ({ travel }) => travel(0.1),
      typed: 'Beyond the nut',
    },
    {
      label: 'From the saddle to the anchor',
      says: ({ travel }) => travel(0.05),
      typed: 'Beyond the saddle',
    },
  ],
  DrawTheBoard: [...sides, ...sides.map((words): Words => ({ ...words, upright: true }))],
  EvenedOut: [0, 1].map((): Words => ({
    label: 'Length of the bass side',
    says: ({ state, length }) => length(boardOf(state).bass),
    typed: 'Bass side',
    upright: true,
  })),
  // On either sheet; a bass's sets are counted in no steps, so they have no rule.
  RuleMap: [0, 1].flatMap((): Words[] => [
    {
      label: 'Your rule',
      says: ({ length }) => `half a step for ${length(fromInches(0.5))}`,
      typed: 'Half a step for',
      shows: ({ length }) => length(fromInches(0.5)),
      when: ({ state }) => gripRow(ruleMapOf(state.mine)) !== undefined,
    },
    {
      label: 'Scale of the guitar on the map',
      says: /^.+ on \d.+$/,
      typed: 'Scale of the guitar',
      shows: /^\d/,
    },
  ]),
  DragBoard: [
    { label: 'Length of the bass side', says: ({ state, length }) => length(boardOf(state).bass) },
  ],
  ThreeRoads: [
    {
      label: 'The low note, to the right is lower',
      says: ({ state }) => formatNote(lowString(state).note),
      typed: 'Low note',
    },
    {
      label: 'Your string on the map: left and right for its length, up and down for its gauge',
      says: ({ state, length }) => {
        const { point } = lowString(state);
        return new RegExp(
          `^${spokenGauge(point.gauge, state.units)}, ${length(point.speakingLength)}, ${formatForce(point.tension, state.units)}: .+\\.$`,
        );
      },
      typed: 'Length',
      shows: ({ state, length }) => length(lowString(state).point.speakingLength),
      free: true,
    },
  ],
  DragLowNote: [
    {
      label: 'The low note, to the right is lower',
      says: ({ state }) => formatNote(lowString(state).note),
    },
  ],
  TwoNecks: pair('Feels right: ', 'Scale length, to be strung'),
  DragScale: [{ label: 'Scale length, feels right', says: ofScale }],
  PressingDown: [
    {
      label: 'Height of the string over the twelfth fret',
      says: ({ state, small }) => small(usualHeight(state.mine)),
      typed: 'Height over the 12th fret',
      upright: true,
    },
    {
      label: 'Fret at which the string is pressed down',
      says: 'fret 12',
      typed: 'Fret',
      shows: '12',
    },
  ],
  TheBridge: [
    {
      label: 'Pull of the strings, from a lighter set to a heavier one',
      says: ({ state }) => formatTotal(totalPull(pullsOf(state.mine)), state.units),
    },
    {
      label: 'Claw of the springs, turns of its screws',
      says: 'as it was set',
      typed: 'Turns',
      shows: '0.0',
    },
  ],
  TheBuckets: [
    {
      label: 'Level of the buckets, the note',
      says: ({ own }) => formatNote(own.note),
      typed: 'Note of all buckets',
      upright: true,
    },
  ],
  TheCliff: [length, note, length, note],
  // One on either sheet.
  TheFlags: Array.from({ length: 2 }, () => ({
    label: ({ own }) =>
      `Saddle of the ${spokenNote(own.note)} string, set back from the scale length`,
    says: ({ small }) => small(0),
    typed: 'Saddle back by',
  })),
  TheNutSlot: [gauge],
  Necks: pair('', ''),
};
/** Typed twins that come apart from their drawing. */
const twins: Readonly<Record<string, Component>> = { Monochord: LengthTwin };
/** What is stepped and typed elsewhere: the pull of a set by its two buttons, the bench's scales in its own fields. */
const elsewhere: ReadonlySet<string> = new Set(['TheBridge 0', 'Necks 0', 'Necks 1']);
/** Numbers in the prose are typed over where they stand. */
const isProse = (name: string): boolean => name.startsWith('Drag');

const modules = import.meta.glob<{ default: Component<Record<string, unknown>> }>(
  '../../../src/figures/{pull,feel,choosing,consequences,bench,reference}/**/*.svelte',
  { eager: true },
);
const sources = import.meta.glob<string>(
  '../../../src/figures/{pull,feel,choosing,consequences,bench,reference}/**/*.svelte',
  { eager: true, query: '?raw', import: 'default' },
);
const nameOf = (path: string): string => path.split('/').at(-1)?.replace('.svelte', '') ?? '';
const folderOf = (path: string): string => path.split('/').slice(0, -1).join('/');
const isWhole = ([path]: [string, unknown]): boolean =>
  /useFigure\(|<DragNumber/.test(sources[path] ?? '');
const wholes = Object.entries(modules).filter(isWhole);
const propsOf: Readonly<Record<string, object>> = {
  DragBoard: { which: 'bass' },
  DragScale: { side: 'mine' },
};

test('every handle belongs to a figure of this table', () => {
  const holding = Object.keys(sources).filter((path) =>
    /<(Handle|DragNumber|Ring|MapPoint)\b/.test(sources[path] ?? ''),
  );
  const parts = holding.filter((path) => !(nameOf(path) in table));
  // What is not in the table is a part of what is, in the same folder.
  for (const path of parts)
    expect(
      wholes.some(([whole]) => folderOf(whole) === folderOf(path) && nameOf(whole) in table),
      path,
    ).toBe(true);
});

const seenOf = (id: string, units: Units): Seen => {
  const state = withUnits(stateOf(id), units);
  const own = pullsOf(state.mine)[0];
  if (!own) throw new Error('no string');
  return {
    state,
    own,
    length: (metres) => formatLength(metres, units),
    travel: (metres) => `${travelNumber(metres, units)}\u00a0${lengthUnit(units)}`,
    small: (metres) =>
      units === 'in-lb'
        ? `${(metres / 0.0254).toFixed(3)}\u00a0in`
        : `${(metres * 1000).toFixed(2)}\u00a0mm`,
  };
};
const spelled = <T>(words: T | ((seen: Seen) => T), seen: Seen): T =>
  typeof words === 'function' ? (words as (seen: Seen) => T)(seen) : words;

function matches(text: string | undefined, wanted: string | RegExp, of: string): void {
  if (typeof wanted === 'string') expect(text, of).toBe(wanted);
  else expect(text, of).toMatch(wanted);
}

function check(knob: Knob, words: Words, seen: Seen): void {
  expect(knob.label).toBe(spelled(words.label, seen));
  matches(knob.text, spelled(words.says, seen), knob.label);
  const orientation = words.free ? '' : words.upright ? 'vertical' : 'horizontal';
  expect(knob.orientation, knob.label).toBe(orientation);
  expect(knob.min, knob.label).toBeLessThan(knob.max);
}

describe.each(wholes.map(([path, module]) => [nameOf(path), module.default] as const))(
  '%s',
  (name, figure) => {
    test.each(
      three.flatMap((id) => (['in-lb', 'mm-N'] as const).map((units) => [id, units] as const)),
    )('of %s in %s', (id, units) => {
      const seen = seenOf(id, units);
      const found = drawnWith(seen.state, figure as Component, propsOf[name]);
      const knobs = knobsOf(found.root, 1);
      const words = (table[name] ?? []).filter(({ when }) => when?.(seen) ?? true);
      expect(knobs.map((k) => k.label)).toHaveLength(words.length);
      const beside = twins[name];
      const fields = fieldsOf(beside ? drawnWith(seen.state, beside) : found);
      knobs.forEach((knob, i) => {
        const each = words[i];
        if (!each) return;
        check(knob, each, seen);
        if (each.typed === undefined) {
          expect(isProse(name) || elsewhere.has(`${name} ${i}`), knob.label).toBe(true);
          return;
        }
        const shown = fields[spelled(each.typed, seen)];
        matches(shown, spelled(each.shows ?? each.says, seen), `field of ${knob.label}`);
      });
    });
  },
);

test('the saddle of a string is known for all three, so that its handle is there', () => {
  for (const id of three) {
    const { state, own } = seenOf(id, 'mm-N');
    const known = intoned(own);
    expect(known && bestSaddle(known, usualHeight(state.mine)).saddleSetback).toBeGreaterThan(0);
  }
});
