/** What can't be is said loudly, and nothing is said of what the trade strings every day. */
import { expect, test } from 'vitest';

import { sheetVerdict } from '../../src/figures/bench/verdict.ts';
import { alarmsOf, ownAlarms, possibleWeights, usualPulls } from '../../src/instrument/alarms.ts';
import { constructionOf, drawerOf } from '../../src/instrument/drawer.ts';
import { withNotes, withTargetFamily } from '../../src/instrument/edit.ts';
import { familyNames } from '../../src/instrument/family-names.ts';
import { formatForce } from '../../src/instrument/format.ts';
import { jobs } from '../../src/instrument/jobs.ts';
import { moreInstrument, moreInstruments } from '../../src/instrument/more-instruments.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import type { Instrument, State, Target } from '../../src/instrument/schema.ts';
import {
  asTarget,
  initialState,
  workshop,
  workshopInstrument,
} from '../../src/instrument/workshop.ts';
import { tunings } from '../../src/instrument/tunings.ts';
import { fromInches, linearDensity, poundsForce } from '../../src/physics/index.ts';

const said = (state: State): string => alarmsOf(state).join(' ');
const withMine = (mine: Instrument): State => ({ ...initialState, mine, other: asTarget(mine) });

test('nothing is said of any of the workshop’s instruments, on any other of its sort, nor of its jobs', () => {
  for (const { id } of workshop) {
    const mine = workshopInstrument(id);
    expect(ownAlarms(mine, 'in-lb'), id).toEqual([]);
    expect(alarmsOf(withMine(mine)), id).toEqual([]);
  }
  for (const { instrument, id } of moreInstruments) {
    expect(ownAlarms(instrument, 'in-lb'), id).toEqual([]);
    expect(alarmsOf(withMine(instrument)), id).toEqual([]);
  }
  for (const { title, state } of jobs) expect(alarmsOf(state), title).toEqual([]);
});

test('every string of every drawer weighs what such a string can weigh', () => {
  for (const family of [undefined, ...familyNames])
    for (const kind of ['plain', 'wound'] as const)
      for (const gauge of drawerOf(family).gauges[kind]) {
        const string = { kind, gauge, ...(family && { family }) };
        const weight = linearDensity(constructionOf(string));
        const { low, high } = possibleWeights(string);
        expect(weight, `${kind} ${gauge} ${family}`).toBeGreaterThan(low);
        expect(weight, `${kind} ${gauge} ${family}`).toBeLessThan(high);
      }
});

test('a weight that no such string could have is told, with what it could be', () => {
  const mine = workshopInstrument('redshank');
  const weighed = (unitWeight: number): Instrument => ({
    ...mine,
    strings: mine.strings.map((s, i) => (i === 0 ? { ...s, unitWeight } : s)),
  });
  // A steel ten weighs 0.398 g/m: ten times that is a slip of the decimal point.
  expect(said(withMine(weighed(3.98e-3)))).toContain('String 1 of Redshank can’t weigh 3.98');
  expect(said(withMine(weighed(3.98e-5)))).toContain('can’t weigh 0.0398');
  expect(said(withMine(weighed(4.0e-4)))).toBe('');
});

test('a set of strings that pulls as nothing does is told, in one string and in all', () => {
  const mine = workshopInstrument('redshank');
  const heavy = { ...mine, strings: mine.strings.map((s) => ({ ...s, unitWeight: 0.03 })) };
  expect(said(withMine(heavy))).toMatch(
    /would each pull up to .*lb\. On an instrument of that length such strings pull .*lb at most/,
  );
  expect(said(withMine(heavy))).toMatch(/All strings of Redshank together would pull [\d,]+/);
});

test('of several strings that pull too hard the greatest pull is told, not the first one’s', () => {
  const mine = workshopInstrument('redshank');
  const strings = mine.strings.map((s, i) => (i > 3 ? { ...s, unitWeight: 0.02 * i } : s));
  const pulls = pullsOf({ ...mine, strings });
  expect(pulls[4]?.tension).toBeGreaterThan(pulls[5]?.tension ?? Infinity);
  const turned = {
    ...mine,
    strings: strings.map((s, i) => (i === 5 ? { ...s, unitWeight: 0.19 } : s)),
  };
  const most = pullsOf(turned)[5]?.tension ?? NaN;
  expect(most).toBeGreaterThan(pulls[4]?.tension ?? Infinity);
  expect(said(withMine(turned))).toContain(`pull up to ${formatForce(most, 'in-lb')}.`);
});

test('38 lb on a ukulele’s string is told, and so is steel’s load on what was built for nylon', () => {
  const notes = ['A4', 'E4', 'C4', 'G4'];
  const length = fromInches(15);
  const ukulele: Target = withTargetFamily(
    {
      ...asTarget(workshopInstrument('turnstone')),
      name: 'Sanderling’s chick',
      scale: { treble: length, bass: length },
      strings: notes.map((note) => ({ note })),
    },
    'classical, nylon',
  );
  const bass = workshopInstrument('godwit');
  const state: State = { ...initialState, mine: bass, other: ukulele };
  const pulls = bass.strings.length;
  expect(pulls).toBe(4);
  expect(poundsForce(usualPulls('classical, nylon').most)).toBeLessThan(22);
  expect(said(state)).toMatch(/of Sanderling’s chick would (each )?pull/);
  const guitar: State = {
    ...initialState,
    aim: { ...initialState.aim, factor: 1.5 },
    other: asTarget(workshopInstrument('turnstone')),
  };
  expect(said(guitar)).toContain('is the load of steel');
  const steel = { ...guitar, other: { ...guitar.other, family: undefined } };
  expect(said(steel)).toContain('here it would get steel');
});

test('a pull that a guitar carries is told on a ukulele, one and a half times a mandolin’s on a violin', () => {
  const guitars = pullsOf(workshopInstrument('turnstone')).map(({ tension }) => tension);
  const like = (id: string, mine: Instrument): State => ({
    ...initialState,
    mine,
    other: asTarget(moreInstrument(id)),
  });
  expect(said(like('stint', moreInstrument('stint')))).toBe('');
  // A ukulele’s strings pull about half of what a guitar’s nylon does: one as on the guitar, and half as much again, is too much.
  expect(Math.max(...guitars)).toBeLessThan(90);
  expect(said(like('stint', workshopInstrument('sanderling')))).toMatch(
    /of Stint would (each )?pull/,
  );
  const heavier = like('phalarope', moreInstrument('knot'));
  const half = { ...heavier, aim: { ...heavier.aim, factor: 1.5 } };
  expect(said(half)).toMatch(/Phalarope/);
  const gut = { ...asTarget(moreInstrument('phalarope')), builtFor: 'gut' as const };
  expect(said({ ...initialState, mine: moreInstrument('phalarope'), other: gut })).toContain(
    'built for gut, and here it would get steel',
  );
});

test('a string that breaks comes first, in alarm and verdict', () => {
  const strings = initialState.other.strings.map((s, i) =>
    i === 0 ? { note: 'C5', pick: { kind: 'plain' as const, gauge: 10 } } : s,
  );
  const state = { ...initialState, other: { ...initialState.other, strings } };
  expect(said(state)).toContain('String 1 of Whimbrel breaks: C5 is too high for 26.5\u00a0in.');
  expect(sheetVerdict(state)).toBe('String 1 breaks as strung here.');
});

test('a new tuning leaves no string stretched or slack to nonsense without a word', () => {
  let nonsense = 0;
  for (const { id } of workshop)
    for (const { id: tuning, notes } of tunings) {
      const retuned = withNotes(workshopInstrument(id), notes);
      // By how much the pull of each string changed: the square of its pitch, whatever it is made of.
      const old = pullsOf(workshopInstrument(id));
      const off = pullsOf(retuned).some((pull, i) => {
        const before = old[i]?.tension ?? pull.tension;
        return pull.strain === 'broken' || pull.tension < before / 5 || pull.tension > 5 * before;
      });
      if (!off) continue;
      nonsense += 1;
      expect(ownAlarms(retuned, 'in-lb'), `${id} in ${tuning}`).not.toEqual([]);
      expect(alarmsOf(withMine(retuned)), `${id} in ${tuning}`).not.toEqual([]);
    }
  expect(nonsense).toBeGreaterThan(20);
  const bass = withNotes(workshopInstrument('redshank'), ['G2', 'D2', 'A1', 'E1']);
  expect(ownAlarms(bass, 'in-lb').join(' ')).toMatch(/Strings? 1.*hang slack/);
  const high = withNotes(workshopInstrument('godwit'), ['E4', 'B3', 'G3', 'D3']);
  expect(ownAlarms(high, 'in-lb').join(' ')).toMatch(/break/);
});
