/** The bench: what the sheet says of each string, where its marks stand in the felt band, and the two necks above it. */
import type { Element } from 'hast';
import { describe, expect, test } from 'vitest';

import BendSheet from '../../../src/figures/bench/BendSheet.svelte';
import Aim from '../../../src/figures/bench/Aim.svelte';
import Necks from '../../../src/figures/bench/Necks.svelte';
import NewStrings from '../../../src/figures/bench/strings/NewStrings.svelte';
import MyStrings from '../../../src/figures/bench/strings/MyStrings.svelte';
import BendTable from '../../../src/figures/bench/BendTable.svelte';
import SheetTable from '../../../src/figures/bench/SheetTable.svelte';
import SheetTop from '../../../src/figures/bench/SheetTop.svelte';
import { neckOf } from '../../../src/figures/kit/neck.ts';
import { drawnThickness } from '../../../src/figures/kit/strings.ts';
import {
  forceNumber,
  formatDifference,
  formatGauge,
  formatLength,
  formatNote,
  formatShare,
  formatTotal,
  travelNumber,
} from '../../../src/instrument/format.ts';
import { pullOf, pullsOf, totalPull } from '../../../src/instrument/pulls.ts';
import { pushedTo } from '../../../src/instrument/pushed.ts';
import type { Gauge, State } from '../../../src/instrument/schema.ts';
import { moreInstrument } from '../../../src/instrument/more-instruments.ts';
import { asTarget, initialState, workshopInstrument } from '../../../src/instrument/workshop.ts';
import { FELT_LOW, stringScale } from '../../../src/physics/index.ts';
import { all, attribute, drawnWith, hasClass, marks, only, textOf } from './drawn.ts';
import { fieldsOf, knobsOf, sheetOf } from './sheet.ts';
import { stateOf, three, withUnits } from './states.ts';

const LONGER = 1.04;
const bench = (id: string, more: Partial<State> = {}): State => {
  const state = stateOf(id);
  const { treble, bass } = state.mine.scale;
  const scale = { treble: treble * LONGER, bass: bass * LONGER };
  return { ...state, other: { ...asTarget(state.mine), name: 'Twin', scale }, ...more };
};
/** One of the workshop's others, to be strung like itself or like another */
const stateWith = (id: string, like?: string): State => {
  const one = moreInstrument(id);
  const mine = like === undefined ? one : workshopInstrument(like);
  return { ...initialState, mine, other: asTarget(one) };
};
const bendsIn = (state: State) =>
  drawnWith(state, BendTable, { bend: state.bend, onchange: () => undefined });
const cells = (row: Element) => all(row, (e) => e.tagName === 'td');
/** The cell of a row that stands under a heading. */
function under(table: Element, heading: string, row: Element): Element | undefined {
  const heads = all(table, (e) => e.tagName === 'th' && attribute(e, 'scope') === 'col');
  return cells(row)[heads.findIndex((e) => textOf(e).startsWith(heading)) - 1];
}
const said = (cell: Element | undefined): string => (cell ? textOf(cell).trim() : '');

describe.each(three)('%s', (id) => {
  const state = bench(id, { bend: { fret: 7, rise: 100, shown: true } });
  const { mine, other } = state;
  const found = drawnWith(state, SheetTable);
  const [table] = all(found.root, (e) => e.tagName === 'table');
  const [bends] = all(bendsIn(state).root, (e) => e.tagName === 'table');
  const bodyOf = (of: Element | undefined): Element[] =>
    of ? all(only(all(of, (e) => e.tagName === 'tbody')), (e) => e.tagName === 'tr') : [];
  const own = pullsOf(mine);
  const set = drawnWith(state, NewStrings);
  const fields = fieldsOf(set);
  const picks = mine.strings.map((string, i): Gauge => {
    const text = fields[`Gauge of string ${i + 1}`] ?? '';
    return {
      kind: text.endsWith('w') ? 'wound' : 'plain',
      gauge: Number.parseFloat(text),
      ...(string.family && { family: string.family }),
    };
  });
  const on = (gauge: Gauge, i: number) =>
    pullOf({
      gauge,
      note: other.strings[i]?.note ?? '',
      a4: other.a4,
      speakingLength: stringScale({ ...other.scale, index: i, count: own.length }),
    });
  const strung = picks.map(on);

  test('every row has its string’s pull, what it is to be, and how far it is from that', () => {
    const rows = bodyOf(table);
    expect(rows).toHaveLength(own.length);
    rows.forEach((row, i) => {
      const [pull, before, left] = [strung[i], own[i], on(own[i]?.gauge ?? (picks[0] as Gauge), i)];
      if (!pull || !before) throw new Error('no such string');
      expect(textOf(only(all(row, (e) => e.tagName === 'th')))).toContain(formatNote(before.note));
      const [gauge, number, aim, difference, strip, strength] = [
        'Gauge',
        'Pull',
        'Aim',
        'Difference',
        'In the felt band',
        'Of strength',
      ].map((heading) => table && under(table, heading, row));
      const off = pull.tension / before.tension - 1;
      expect([said(number).split('\u00a0±')[0], said(aim), said(difference)]).toEqual([
        forceNumber(pull.tension, 'in-lb'),
        forceNumber(before.tension, 'in-lb'),
        formatDifference(off),
      ]);
      expect(said(gauge)).toMatch(new RegExp(`^${formatGauge(pull.gauge, 'in-lb')}( |$)`));
      expect(said(strength)).toContain(formatShare(pull.share ?? NaN));
      // Its ring and its dot, in the scale of the band.
      const svg = strip && only(all(strip, (e) => e.tagName === 'svg'));
      if (!svg) throw new Error('no strip');
      const drawing = sheetOf(found.root, svg);
      const zero = drawing.one('line.zero').left;
      const unit = (drawing.one('rect.band').right - zero) / FELT_LOW;
      const [from, to] = drawing.one('line.way').lines[0] ?? [];
      const held = (value: number): number => Math.max(-0.26, Math.min(0.26, value));
      expect(((to?.[0] ?? NaN) - zero) / unit).toBeCloseTo(held(off), 9);
      expect(((from?.[0] ?? NaN) - zero) / unit).toBeCloseTo(
        held(left.tension / before.tension - 1),
        9,
      );
    });
    const foot = only(all(found.root, (e) => e.tagName === 'tfoot'));
    expect(
      ['Pull', 'Aim', 'Difference'].map((heading) => said(table && under(table, heading, foot))),
    ).toEqual([
      formatTotal(totalPull(strung), 'in-lb'),
      formatTotal(totalPull(own), 'in-lb'),
      formatDifference(totalPull(strung) / totalPull(own) - 1),
    ]);
  });

  test('no neighbour of a pick in the drawer would come nearer to the old pull', () => {
    // A pick is the nearest: gauges half a step to either side pull farther off, or do not exist.
    strung.forEach((pull, i) => {
      const wanted = own[i]?.tension ?? NaN;
      expect(Math.abs(pull.tension / wanted - 1)).toBeLessThan(0.16);
      const { gauge } = picks[i] ?? { gauge: NaN };
      const old = own[i]?.gauge.gauge ?? NaN;
      // A longer string of the same pull is thinner, or the same where the drawer has nothing between.
      expect(gauge).toBeLessThanOrEqual(old);
    });
  });

  test('bends stand as on the own instrument, then as strung', () => {
    const rows = bodyOf(bends);
    expect(rows).toHaveLength(own.length);
    rows.forEach((row, i) => {
      const [was, is] = [own[i], strung[i]].map((p) => p && pushedTo(p, 7, 100));
      const [travel, push] = cells(row);
      if (!was || !is || is.strain === 'broken') return;
      const numbers = (cell: Element | undefined) =>
        cell
          ? all(
              cell,
              (e) =>
                ['from', 'by'].includes(attribute(e, 'className').split(' ')[0] ?? '') ||
                e.tagName === 'strong',
            ).map((e) => textOf(e).trim())
          : [];
      expect(numbers(travel)).toEqual([
        travelNumber(was.travel, 'in-lb'),
        travelNumber(is.travel, 'in-lb'),
        formatDifference(is.travel / was.travel - 1),
      ]);
      expect(numbers(push)).toEqual([
        forceNumber(was.push, 'in-lb'),
        forceNumber(is.push, 'in-lb'),
        formatDifference(is.push / was.push - 1),
      ]);
    });
  });

  test('a gauge that is pinned stays, and is said with what it brings', () => {
    const pinned = {
      ...other,
      strings: other.strings.map((s, i) => (i === 0 ? { ...s, pick: own[0]?.gauge } : s)),
    } as State['other'];
    const at = drawnWith({ ...state, other: pinned }, NewStrings);
    expect(fieldsOf(at)['Gauge of string 1']).toBe(
      formatGauge(own[0]?.gauge ?? (picks[0] as Gauge), 'in-lb'),
    );
    const names = all(at.root, (e) => e.tagName === 'button').map(
      (b) => attribute(b, 'ariaLabel') || said(b),
    );
    expect(names).toContain('Gauge of string 1, a step lighter');
    expect(names).toContain('Gauge of string 1, a step heavier');
    expect(names).toContain('back to the pick, string 1');
    expect(names).not.toContain('back to the pick, string 2');
    const number = (difference: number): string => formatDifference(difference);
    const back = on(own[0]?.gauge ?? (picks[0] as Gauge), 0);
    const [first] = all(at.root, (e) => attribute(e, 'role') === 'slider');
    expect(first && attribute(first, 'ariaValueText')).toContain(
      number(back.tension / (own[0]?.tension ?? NaN) - 1),
    );
  });

  test('on the two necks each string lies as thick as it is drawn everywhere, wound ones with their wrap', () => {
    const drawnOn = (neck: typeof set) =>
      all(neck.root, (e) => hasClass(e, 'plain') || hasClass(e, 'wound')).map((bar) => [
        Number(attribute(bar, 'height')),
        hasClass(bar, 'wound'),
      ]);
    const asDrawn = (gauges: readonly Gauge[]) =>
      gauges.map(({ gauge, kind }) => [
        expect.closeTo(drawnThickness(gauge) * 1.4, 6),
        kind === 'wound',
      ]);
    expect(drawnOn(set)).toEqual(asDrawn(picks));
    expect(drawnOn(drawnWith(state, MyStrings))).toEqual(asDrawn(mine.strings));
  });

  test('each string runs from its own nut to its own saddle, and frets lie where the neck has them', () => {
    const neck = neckOf(mine, 17);
    const from = Math.min(neck.nut.treble, neck.nut.bass);
    const whole = Math.max(...neck.strings.map(({ saddle }) => saddle)) - from;
    const at = (along: number) => expect.closeTo((100 * (along - from)) / whole, 1) as number;
    const found = drawnWith(state, MyStrings);
    const bars = all(found.root, (e) => hasClass(e, 'plain') || hasClass(e, 'wound'));
    expect(
      bars.map((bar) => {
        const x = Number.parseFloat(attribute(bar, 'x'));
        return [x, x + Number.parseFloat(attribute(bar, 'width'))];
      }),
    ).toEqual(neck.strings.map(({ nut, saddle }) => [at(nut), at(saddle)]));
    // The middle of a fret lies between where it crosses the first and the last string.
    const middles = marks(found.root, 'line.fret').map(
      (fret) =>
        (Number.parseFloat(attribute(fret, 'x1')) + Number.parseFloat(attribute(fret, 'x2'))) / 2,
    );
    expect(middles).toEqual(neck.frets.map(({ treble, bass }) => at((treble + bass) / 2)));
  });

  test('beside each string its ring and its dot lie in one band', () => {
    const band = only(marks(set.root, 'rect.inner'));
    const left = Number.parseFloat(attribute(band, 'x'));
    const wide = Number.parseFloat(attribute(band, 'width'));
    expect(left + wide / 2).toBeCloseTo(50, 2);
    const unit = wide / 2 / FELT_LOW;
    const ways = marks(set.root, 'line.way');
    expect(ways).toHaveLength(own.length);
    ways.forEach((way, i) => {
      const [pull, before] = [strung[i], own[i]];
      const old = on(own[i]?.gauge ?? (picks[0] as Gauge), i);
      if (!pull || !before) throw new Error('no such string');
      const held = (value: number): number => Math.max(-0.26, Math.min(0.26, value));
      const at = (name: string): number => Number.parseFloat(attribute(way, name));
      expect((at('x2') - 50) / unit).toBeCloseTo(held(pull.tension / before.tension - 1), 3);
      expect((at('x1') - 50) / unit).toBeCloseTo(held(old.tension / before.tension - 1), 3);
    });
  });

  test('both necks begin at one nut line and end at their scales', () => {
    const necks = drawnWith(state, Necks);
    const lines = marks(necks.root, 'line.dimension');
    const at = (i: number, name: 'x1' | 'x2'): number =>
      Number.parseFloat(attribute(lines[i] as Element, name));
    expect(at(0, 'x1')).toBe(at(1, 'x1'));
    expect((at(1, 'x2') - at(1, 'x1')) / (at(0, 'x2') - at(0, 'x1'))).toBeCloseTo(LONGER, 4);
    const knobs = knobsOf(necks.root, 100);
    expect(knobs.map((k) => [k.x, k.label, k.text])).toEqual([
      [
        expect.closeTo(at(0, 'x2'), 2),
        'Scale length, feels right',
        formatLength(mine.scale.treble, 'in-lb'),
      ],
      [
        expect.closeTo(at(1, 'x2'), 2),
        'Scale length, to be strung',
        formatLength(other.scale.treble, 'in-lb'),
      ],
    ]);
  });
});

test('the sheet’s head and columns are in the reader’s units', () => {
  const state = withUnits(bench('avocet'), 'mm-N');
  const heads = [drawnWith(state, SheetTable), bendsIn(state)]
    .flatMap(({ root }) => all(root, (e) => e.tagName === 'th' && attribute(e, 'scope') === 'col'))
    .map((e) => textOf(e).trim());
  expect(heads).toContain('Pull, N');
  expect(heads).toContain('Travel, mm');
  const { treble, bass } = bench('avocet').other.scale;
  const facts = all(
    drawnWith(state, SheetTop, { rows: '', after: '' }).root,
    (e) => e.tagName === 'dd',
  ).map((e) => textOf(e).trim());
  expect(facts).toContain(`${formatLength(treble, 'mm-N')} to ${formatLength(bass, 'mm-N')}`);
  expect(facts).toContain('Avocet, 647.7\u00a0mm');
});

test('the aim asks for a share of its own pull, by its name', () => {
  const state = bench('godwit', { aim: { ...stateOf('godwit').aim, factor: 0.9 } });
  expect(fieldsOf(drawnWith(state, Aim)).at).toBe('90 %');
  const [table] = all(drawnWith(state, SheetTable).root, (e) => e.tagName === 'table');
  const [first] = table ? all(table, (e) => e.tagName === 'tr').slice(1) : [];
  const own = pullsOf(state.mine)[0];
  expect(said(table && first && under(table, 'Aim', first))).toBe(
    forceNumber((own?.tension ?? NaN) * 0.9, 'in-lb'),
  );
});

test('a short string begins at a nut of its own, courses are tied together, and no board without frets has any', () => {
  const five = drawnWith(stateWith('plover'), MyStrings);
  expect(marks(five.root, 'rect.nut')).toHaveLength(1);
  const bars = all(five.root, (e) => hasClass(e, 'plain') || hasClass(e, 'wound'));
  const begins = bars.map((bar) => Number.parseFloat(attribute(bar, 'x')));
  // The fifth fret lies a quarter of the way along.
  expect(begins).toEqual([0, 0, 0, 0, expect.closeTo(100 * (1 - 2 ** (-5 / 12)), 1)]);
  const paired = drawnWith(stateWith('knot', 'redshank'), NewStrings);
  const rows = all(paired.root, (e) => e.tagName === 'li');
  expect(rows.map((row) => hasClass(row, 'joined'))).toEqual(rows.map((_, i) => i % 2 === 1));
  // Its thin wound strings are the lightest to be had, and say so where they lie, as the sheet does.
  const lightest = rows.filter((row) => textOf(row).includes('the drawer’s lightest')).length;
  const onSheet = all(
    drawnWith(stateWith('knot', 'redshank'), SheetTable).root,
    (e) => hasClass(e, 'says') && textOf(e) === 'the drawer’s lightest',
  );
  expect(onSheet.length).toBeGreaterThan(0);
  expect(lightest).toBe(onSheet.length);
  const [first] = all(paired.root, (e) => attribute(e, 'role') === 'slider');
  expect(first && attribute(first, 'ariaLabel')).toBe('String 1, course 1, E5');
  const violin = drawnWith(stateWith('phalarope'), MyStrings);
  expect(marks(violin.root, 'line.fret')).toHaveLength(0);
  expect(marks(violin.root, 'circle.dot')).toHaveLength(0);
});

test('the bends say of a course that its pushes add up, and of a capo that it is off; of neither, nothing', () => {
  const said = (more: Partial<State['other']>, id?: string): string => {
    const mine = id ? moreInstrument(id) : workshopInstrument('redshank');
    return drawnWith({ ...initialState, mine, other: { ...asTarget(mine), ...more } }, BendSheet)
      .html;
  };
  expect(said({}, 'knot')).toContain('holds all its pushes together');
  expect(said({}, 'knot')).not.toContain('capo');
  expect(said({ capo: 2 })).toContain('The capo is left off');
  expect(said({})).not.toMatch(/pushes together|capo/);
});

test.each(['spoonbill', 'knot', 'stint'])('the gauges of %s fit in their fields', (id) => {
  const mine = moreInstrument(id);
  const { root } = drawnWith({ ...initialState, mine, other: asTarget(mine) }, MyStrings);
  const fields = all(root, (e) => e.tagName === 'input');
  expect(fields.length).toBeGreaterThanOrEqual(mine.strings.length);
  for (const field of fields.slice(0, mine.strings.length)) {
    const wide = Number(/width:\s*([\d.]+)ch/.exec(attribute(field, 'style'))?.[1]);
    // Its padding takes two more.
    expect(wide).toBeGreaterThanOrEqual(attribute(field, 'value').length + 2);
  }
});
