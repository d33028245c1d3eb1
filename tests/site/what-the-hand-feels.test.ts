import { expect, test } from 'vitest';

import { formatDifference, formatForce } from '../../src/instrument/format.ts';
import { pullsOf } from '../../src/instrument/pulls.ts';
import { workshopInstrument } from '../../src/instrument/workshop.ts';
import * as physics from '../../src/physics/index.ts';
import { lookUp, pressKey, sliderValue } from './kit.ts';
import { chapterOnce, drags, toldBy, refused, typed } from './one-chapter.ts';

const page = chapterOnce('what-the-hand-feels');
const rulers = () => page().locator('#three-rulers');
const scale = () => rulers().locator('[data-handle="second-scale"]');
const gauge = () => rulers().locator('[data-handle="second-gauge"]');
const place = () => page().locator('#fingers-place');
const finger = () => place().locator('[data-handle="place"]');

const [string] = pullsOf(workshopInstrument('redshank'));
if (string?.construction.kind !== 'plain') throw new Error('The first string is not plain.');
const own = { ...string, construction: string.construction };

/** Pull, push and travel of a whole tone at the twelfth fret. */
function met(diameter: number, speakingLength: number) {
  const construction = { ...own.construction, diameter };
  const { frequency } = own;
  const linearDensity = physics.linearDensity(construction);
  const tension = physics.tension({ speakingLength, frequency, linearDensity });
  const bent = { construction, speakingLength, tension, at: speakingLength / 2, rise: 200 };
  return { tension, ...physics.bendTo(bent) };
}

/** What the three pointers letter when the second string has this length, and this gauge or exactly the same pull. */
function differences(length: number, thousandths?: number): string[] {
  const alike = (own.construction.diameter * own.speakingLength) / length;
  const there = met(thousandths ? physics.fromThousandths(thousandths) : alike, length);
  const here = met(own.construction.diameter, own.speakingLength);
  return [there.tension / here.tension, there.push / here.push, there.travel / here.travel].map(
    (ratio) => formatDifference(ratio - 1),
  );
}
const pointers = (): Promise<string[]> =>
  rulers().locator('g.pointer text:visible').allTextContents();

async function asItWas(): Promise<void> {
  await lookUp(page());
  await typed(rulers(), 'Second scale', '26.5');
  const alike = rulers().getByRole('button', { name: 'Pull exactly the same' });
  if (await alike.isEnabled()) await alike.click();
}

test.each(drags)('the second saddle dragged with %s points three ways', async (_, drag) => {
  await asItWas();
  expect(await pointers()).toEqual(differences(physics.fromInches(26.5)));
  await drag(scale(), { x: 18 });
  const { now } = await sliderValue(scale());
  expect(now).toBeGreaterThan(physics.fromInches(26.6));
  expect(await pointers()).toEqual(differences(now));
});

test.each(drags)('the second gauge dragged with %s comes from the drawer', async (_, drag) => {
  await asItWas();
  await drag(gauge(), { x: 10 });
  const { now } = await sliderValue(gauge());
  expect(now * 2).toBe(Math.round(now * 2));
  expect(await pointers()).toEqual(differences(physics.fromInches(26.5), now));
});

test('keys, fields and buttons set both strings; what no drawer has is kept and answered', async () => {
  await asItWas();
  await typed(rulers(), 'Second scale', '27 in');
  await pressKey(scale(), 'ArrowLeft');
  expect(await pointers()).toEqual(differences(physics.fromInches(26.75)));
  await typed(rulers(), 'Second gauge', '9');
  expect(await pointers()).toEqual(differences(physics.fromInches(26.75), 9));
  await pressKey(gauge(), 'ArrowRight');
  expect(await pointers()).toEqual(differences(physics.fromInches(26.75), 9.5));
  await rulers().getByRole('button', { name: 'Keep the old string' }).click();
  expect(await pointers()).toEqual(differences(physics.fromInches(26.75), 10));
  await refused(rulers(), 'Second gauge', 'thin', /gauge/i);
  await refused(rulers(), 'Second scale', '90', /from|between/i);
});

test.each(drags)('the finger dragged with %s needs what the slopes ask for', async (_, drag) => {
  await place().getByRole('button', { name: 'the middle' }).click();
  await drag(finger(), { x: 90 });
  const { now, text } = await sliderValue(finger());
  expect(now).toBeGreaterThan(own.speakingLength / 2);
  const stiffness = physics.lateralStiffness({ ...own, at: own.speakingLength - now });
  const push = formatForce(0.001 * stiffness, 'in-lb');
  expect(text).toContain(push);
  expect(await toldBy(place())).toContain(push);
});

test('the finger’s place is keyed and typed', async () => {
  await place().getByRole('button', { name: 'the middle' }).click();
  const quarter = 0.001 * physics.lateralStiffness({ ...own, at: 0.75 * own.speakingLength });
  await typed(place(), 'From the nut', String(25.5 / 4));
  expect(await toldBy(place())).toContain(formatForce(quarter, 'in-lb'));
  await pressKey(finger(), 'Home');
  const { now, min } = await sliderValue(finger());
  expect(now).toBe(min);
  await refused(place(), 'From the nut', '25.4', /From .* to .*/);
});
