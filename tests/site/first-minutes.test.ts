/** A player with a phone: what to do stands before the drawing, their own guitar is three fields away, and a page that was left is found again. */
import { expect, inject, test } from 'vitest';

import { initialState } from '../../src/instrument/workshop.ts';
import { pullsOf, totalPull } from '../../src/instrument/pulls.ts';
import { formatTotal } from '../../src/instrument/format.ts';
import { limits } from '../../src/instrument/limits.ts';
import { browser } from './browser.ts';
import { sideways } from './contents.ts';
import { open, phone, pressKey, smallPhone } from './kit.ts';

const patience = { timeout: 20_000 };

test('on a phone: what to drag, a bar in reach, three fields, the way back, and the chapter to go on with', async () => {
  const { page, problems, close } = await open(
    browser,
    inject('origin') + 'course/speaking-length/',
    { viewport: phone },
  );
  const figure = page.locator('#the-neck');
  await figure.scrollIntoViewIfNeeded();
  await page.mouse.wheel(0, 200);

  // The sentence stands between title and drawing; its leader ends at the handle, and goes once that is used.
  const leader = figure.locator('.figure-leader');
  await expect.poll(() => leader.isVisible(), patience).toBe(true);
  const handle = figure.locator('.stage [data-handle]:visible').first();
  const [act, line, ring] = await Promise.all(
    [figure.locator('.figure-act'), leader, handle].map((each) => each.boundingBox()),
  );
  if (!act || !line || !ring) throw new Error('the figure has no sentence, leader or handle');
  expect(act.y + act.height).toBeLessThanOrEqual(ring.y);
  expect(line.x + line.width).toBeCloseTo(ring.x + ring.width / 2, 0);
  expect(Math.abs(line.y + line.height - (ring.y + ring.height / 2))).toBeLessThan(22);
  await pressKey(handle, 'ArrowRight');
  expect(await leader.count()).toBe(0);

  // The bar: as large as a finger, undo only where there is something to take back.
  const bar = page.getByRole('navigation', { name: 'While you read' });
  await expect.poll(() => bar.isVisible(), patience).toBe(true);
  for (const button of await bar.getByRole('button').all())
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  await bar.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => bar.getByRole('button', { name: 'Undo' }).count(), patience).toBe(0);

  // Its contents lead to a heading, by keys too.
  const contents = bar.getByRole('button', { name: 'Contents' });
  await contents.press('Enter');
  await page.keyboard.press('Escape');
  expect(await contents.getAttribute('aria-expanded')).toBe('false');
  await contents.press('Enter');
  const third = await page.locator('main h2').nth(2).innerText();
  await bar.getByRole('button', { name: third }).press('Enter');
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.textContent), patience)
    .toBe(third);

  // A marked word that leads away leaves a way back to its sentence.
  const cited = page.locator('a.cite').first();
  await cited.press('Enter');
  const back = bar.getByRole('button', { name: 'Back to the text' });
  await expect.poll(() => back.isVisible(), patience).toBe(true);
  await back.click();
  await expect.poll(() => back.count(), patience).toBe(0);
  await expect
    .poll(() => cited.evaluate((word) => word === document.activeElement), patience)
    .toBe(true);

  // The reader's own instrument: three fields, the first of them ready to be typed in.
  await bar.getByRole('button', { name: 'My instrument' }).click();
  const form = page.getByRole('dialog', { name: 'Your instrument' });
  const scale = form.getByLabel('Scale length');
  await expect
    .poll(() => scale.evaluate((field) => field === document.activeElement), patience)
    .toBe(true);
  await page.keyboard.type('24.75 in');
  // The answer doesn't wait for the field to be left.
  const { mine, units } = initialState;
  const treble = 24.75 * 0.0254;
  const total = totalPull(pullsOf({ ...mine, scale: { treble, bass: treble } }));
  await expect
    .poll(() => form.getByRole('status').first().textContent(), patience)
    .toContain(formatTotal(total, units));
  await page.keyboard.press('Enter');
  await form.getByRole('button', { name: 'Done' }).click();
  expect(await form.count()).toBe(0);

  // Who comes back goes on where they were: with the next chapter, since the citation led past this one's end.
  await page.goto(inject('origin'));
  const door = page.locator('[data-read-on]');
  await expect.poll(() => door.locator('.title').textContent()).toBe('Go on with chapter 3');
  await page.goto(inject('origin') + 'course/pitch/');
  await page.mouse.wheel(0, 50);
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem('speaking-length.reading')), patience)
    .toBe('3 pitch');
  await page.evaluate(() =>
    localStorage.setItem('speaking-length.done.speaking-length.measure', '2026-01-05'),
  );
  await page.goto(inject('origin') + 'course/');
  await expect
    .poll(() => page.locator('[data-read-on]').getAttribute('href'), patience)
    .toMatch(/\/course\/pitch\/$/);
  const station = page.locator('[data-station="speaking-length"]');
  expect(await station.getAttribute('data-done')).toBe('some');
  expect(await station.locator('a').innerText()).toMatch(/1 of \d+ right/);
  expect(problems.filter((each) => !each.startsWith('failed: '))).toEqual([]);
  await close();
});

test('from the home page, one press leads to three fields and their answer, on a phone on its side too', async () => {
  const { page, problems, close } = await open(browser, inject('origin'), {
    viewport: { width: 844, height: 390 },
  });
  await page.getByRole('link', { name: 'Say what it is' }).click();
  const form = page.getByRole('dialog', { name: 'Your instrument' });
  const done = form.getByRole('button', { name: 'Done' });
  await done.waitFor();
  const { y = NaN, height = NaN } = (await done.boundingBox()) ?? {};
  expect(y + height).toBeLessThanOrEqual(390);
  await page.keyboard.type('628 mm');
  await done.click();
  await expect
    .poll(() => page.locator('.bar .facts').first().textContent(), patience)
    .toMatch(/^24\.72\sin/);
  expect(problems).toEqual([]);
  await close();
});

test('Describe yours opens the form from a press that comes before the scripts, on the bench too', async () => {
  const { page, close } = await open(browser, inject('origin') + 'bench/', {
    viewport: phone,
    untouched: true,
    late: { what: /\/(InstrumentBar|core)\.[^/]+\.js/, by: 800 },
  });
  await page.getByRole('button', { name: 'Describe yours' }).click();
  const form = page.getByRole('dialog', { name: 'Your instrument' });
  await expect.poll(() => form.isVisible(), patience).toBe(true);
  await page.keyboard.press('Escape');
  await expect.poll(() => form.count(), patience).toBe(0);
  await close();
});

test('a first visit from a region of millimetres is offered them, and nothing is chosen for it', async () => {
  const { page, close } = await open(browser, inject('origin') + 'course/speaking-length/', {
    viewport: phone,
    before: () => Object.defineProperty(navigator, 'language', { get: () => 'de-DE' }),
  });
  const offer = page.getByRole('button', { name: 'Use mm, kg' });
  expect((await offer.boundingBox())?.height).toBeGreaterThanOrEqual(44);
  expect(await page.getByLabel('Units').inputValue()).toBe('in-lb');
  await offer.click();
  await expect.poll(() => page.getByLabel('Units').inputValue(), patience).toBe('mm-kg');
  await expect.poll(() => offer.isVisible(), patience).toBe(false);
  await page.reload();
  expect(await offer.isVisible()).toBe(false);
  await close();
});

test('a name of as many letters as there may be, without a space, breaks nothing', async () => {
  const name = 'abcdefghij'.repeat(limits.name / 10);
  const link = `#v1/n-${name}/l-650/e4-p10/b3-p13/g3-p17/d3-w26/a2-w36/e2-w46/to/n-${name}/l-660/e4/b3/g3/d3/a2/e2`;
  const { page, close } = await open(browser, inject('origin') + link, { viewport: smallPhone });
  for (const path of ['', 'bench/', 'course/two-guitars-one-feel/']) {
    await page.goto('about:blank');
    await page.goto(inject('origin') + path + link);
    await page.mouse.wheel(0, 900);
    await expect
      .poll(() => page.locator('.bar select').first().innerText(), patience)
      .toContain(name);
    await expect.poll(() => page.locator('.visit').isVisible(), patience).toBe(true);
    expect(await sideways(page), path).toEqual({ by: 0, elements: [] });
  }
  await close();
});

test('on a phone the bench has a bar in reach too: its places, and undo', async () => {
  const { page, problems, close } = await open(browser, inject('origin') + 'bench/', {
    viewport: phone,
  });
  const bar = page.getByRole('navigation', { name: 'While you work' });
  expect((await bar.boundingBox())?.y).toBeGreaterThan(phone.height);
  await page.mouse.wheel(0, 900);
  const foot = async () => {
    const { y = NaN, height = NaN } = (await bar.boundingBox()) ?? {};
    return Math.round(y + height);
  };
  await expect.poll(foot, patience).toBe(phone.height);
  const undo = bar.getByRole('button', { name: 'Undo' });
  expect(await undo.isVisible()).toBe(false);
  await page.locator('.side.other').getByRole('slider', { name: 'String 1, E4' }).press('ArrowUp');
  await expect.poll(() => undo.isVisible(), patience).toBe(true);
  const address = page.url();
  await bar.getByRole('link', { name: 'Sheet' }).press('Enter');
  await expect
    .poll(
      () =>
        page
          .getByRole('heading', { name: 'Stringing sheet' })
          .evaluate((each) => each.getBoundingClientRect().top < innerHeight / 2),
      patience,
    )
    .toBe(true);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('sheet');
  expect(page.url()).toBe(address);
  await undo.click();
  await expect.poll(() => undo.isVisible(), patience).toBe(false);
  expect(problems).toEqual([]);
  await close();
});
