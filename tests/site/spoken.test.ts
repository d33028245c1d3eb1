/**
 * What a screen reader says on the three main paths, as the accessibility tree has it. Words are written down as they are
 * heard; numbers come from the modules that the pages use.
 */
import { expect, inject, test } from 'vitest';

import { feltText, sheetVerdict } from '../../src/figures/bench/verdict.ts';
import { lengthDomain } from '../../src/figures/kit/scale-length/frame.ts';
import { describeShort } from '../../src/figures/pull/the-neck/describe.ts';
import { marksOf, reachOf } from '../../src/figures/kit/scale-length/marks.ts';
import { stepGauge } from '../../src/instrument/drawer.ts';
import { withPick } from '../../src/instrument/edit.ts';
import {
  formatDifference,
  formatForce,
  formatGauge,
  formatLength,
  formatNote,
} from '../../src/instrument/format.ts';
import { planOf } from '../../src/instrument/plan.ts';
import type { State } from '../../src/instrument/schema.ts';
import { sets } from '../../src/instrument/sets.ts';
import { initialState } from '../../src/instrument/workshop.ts';
import { browser } from './browser.ts';
import { desktop, open, scrollThrough } from './kit.ts';
import { Reader } from './speech.ts';

async function reading(path: string, from: string) {
  const visit = await open(browser, inject('origin') + path, { viewport: desktop });
  await scrollThrough(visit.page);
  const reader = await Reader.on(visit.page);
  await reader.from(from);
  return { ...visit, reader };
}

/** Lines as they are written down: a space that does not break is a space to the ear. */
const lines = (...expected: readonly string[]) => expected.map((line) => line.replace(/\s/g, ' '));

const { mine, units } = initialState;
const length = (metres: number) => formatLength(metres, units);

test('describing an instrument', async () => {
  const { reader, close } = await reading('bench/', '.side.mine figcaption');
  await reader.press('Tab');
  await reader.write('Stilt');
  await reader.press('Tab');
  await reader.write('30 furlongs');
  await reader.press('Enter');
  await reader.write('24.75 in');
  await reader.press('Enter');
  for (let i = 0; i < 9; i += 1) await reader.press('Tab');
  await reader.press('ArrowDown');
  await reader.press('Tab');
  await close();

  const chosen = 'tens with heavy basses';
  const gauges = sets.find(({ name }) => name === chosen)?.gauges ?? [];
  const strings = gauges
    .map((gauge, i) => `${formatNote(mine.strings[i]?.note ?? '')} ${formatGauge(gauge, units)}`)
    .join(' · ');
  const refused = '“furlongs” is not a unit of length here; use in, mm or cm.';
  expect(reader.heard).toEqual(
    lines(
      `Tab: Name, textbox, ${mine.name}`,
      `Tab: Scale length, textbox, ${length(mine.scale.treble)}`,
      `Enter: Scale length, textbox, 30 furlongs, invalid entry, ${refused}`,
      `  “${refused}”`,
      'Enter: Scale length, textbox, 24.75 in',
      'Tab: Multi-scale, checkbox',
      `Tab: Tuning, combobox, E standard, collapsed`,
      '(Whole tuning)',
      'Tab: −1 semitone, whole tuning, button',
      'Tab: +1 semitone, whole tuning, button',
      '(1 What feels right)',
      `Tab: Strings, combobox, ${mine.strings.length}, collapsed`,
      `Tab: A4, textbox, ${mine.a4} Hz`,
      'Tab: Strung with, combobox, electric, collapsed',
      'Tab: Courses, frets, left hand single strings from one nut, DisclosureTriangle, collapsed',
      'Tab: Set, combobox, tens, collapsed',
      `ArrowDown: Set, combobox, ${chosen}, collapsed`,
      `Tab: String by string ${strings}, DisclosureTriangle, collapsed`,
    ),
  );
});

test('reading a figure', async () => {
  const { reader, close } = await reading('course/speaking-length/', '#the-neck');
  for (let i = 0; i < 8; i += 1) await reader.press('Tab');
  for (const key of ['ArrowRight', 'Shift+ArrowRight', 'PageUp', 'Home', 'ControlOrMeta+Z'])
    await reader.press(key);
  await close();

  const own = mine.scale.treble;
  const { step, fine, page } = lengthDomain(mine, units);
  const right = own + step;
  const shifted = right + fine;
  const paged = shifted + page;
  const least = reachOf(mine, own).min;
  const told = (metres: number) => `  “${describeShort(mine, metres, units)}”`;
  const slider = (key: string, metres: number) =>
    `${key}: Speaking length, slider, ${length(metres)}`;
  expect(reader.heard).toEqual(
    lines(
      'Tab: Share or keep: The same set on several lengths, button, collapsed',
      'Tab: Pluck the strings, button',
      ...marksOf(mine).map(
        (mark) =>
          `Tab: Try the set on ${length(mark)}, button${Math.abs(mark - own) < 1e-6 ? ', pressed' : ''}`,
      ),
      slider('Tab', own),
      slider('ArrowRight', right),
      told(right),
      slider('Shift+ArrowRight', shifted),
      told(shifted),
      slider('PageUp', paged),
      told(paged),
      slider('Home', least),
      told(least),
      slider('ControlOrMeta+Z', paged),
      '  “Taken back.”',
    ),
  );
});

test('getting a sheet', async () => {
  const { reader, page, close } = await reading('bench/', '.side.other');
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  for (const key of ['Tab', 'ArrowLeft', 'Tab']) await reader.press(key);
  await reader.write('a thick one');
  for (const key of ['Enter', 'Escape']) await reader.press(key);
  await reader.from('.print-choices');
  for (const key of ['Tab', 'Tab', 'Tab', 'Tab', 'Enter']) await reader.press(key);
  await close();

  const picked = planOf(initialState).strings[0]?.pull?.gauge;
  if (!picked) throw new Error('the plan has no first string');
  const lighter = stepGauge(picked, -1);
  const stepped = { ...initialState, other: withPick(initialState.other, 0, lighter) };
  const [first] = planOf(stepped).strings;
  const brought = (state: State): string => {
    const [string] = planOf(state).strings;
    return [
      string?.pull ? formatGauge(string.pull.gauge, units) : '',
      formatForce(string?.pull?.tension ?? 0, units),
      formatDifference(string?.difference ?? 0),
      feltText(state, 0),
    ].join(', ');
  };
  const refused = 'Type a gauge in thousandths, such as 10, .010 or 46w, or in mm.';
  expect(reader.heard).toEqual(
    lines(
      `Tab: String 1, ${formatNote(first?.note ?? '')}, slider, ${brought(initialState)}`,
      `ArrowLeft: String 1, ${formatNote(first?.note ?? '')}, slider, ${brought(stepped)}`,
      `  “${sheetVerdict(stepped)}”`,
      `Tab: Gauge of string 1, textbox, ${formatGauge(lighter, units)}`,
      `Enter: Gauge of string 1, textbox, a thick one, invalid entry, ${refused}`,
      `  “${refused}”`,
      `Escape: Gauge of string 1, textbox, ${formatGauge(lighter, units)}`,
      'Tab: Print the sheet, button',
      'Tab: Print a worksheet, button',
      'Tab: Print its key, button',
      'Tab: Copy a link, button',
      'Enter: Copy a link, button',
      '  “Link copied. It opens this bench as it stands.”',
    ),
  );
});
