/** The listening lab with a microphone that hears a made pluck again and again, with none, and with files of all kinds. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, expect, inject, onTestFinished, test } from 'vitest';

import { browser } from './browser.ts';
import { hearing, RATE, roomThenPluck, wav } from './heard.ts';
import { comeTo, launch, open, phone, type Visit } from './kit.ts';

/** What the microphone hears: f0 in Hz and B, of a string that Redshank's first one is taken for */
const heard = { fundamental: 329.2, inharmonicity: 2.15e-5 };
const folder = mkdtempSync(join(tmpdir(), 'speaking-length-sounds-'));
afterAll(() => rmSync(folder, { recursive: true }));

async function lab(of: Browser, microphone: boolean): Promise<Visit> {
  const visit = await open(of, `${inject('origin')}labs/listen/`, { viewport: phone });
  if (microphone) await visit.page.context().grantPermissions(['microphone']);
  await comeTo(visit.page, '.lab-readings');
  await visit.page.getByRole('button', { name: 'Begin the readings' }).click();
  await visit.page.getByRole('button', { name: 'Listen with the microphone' }).waitFor();
  return visit;
}

test('a microphone that hears plucks: pitch, B and gauge, kept, and still there after a reload', async () => {
  const path = join(folder, 'pluck.wav');
  writeFileSync(path, wav(roomThenPluck(heard)));
  const own = await launch(hearing(path));
  onTestFinished(() => own.close());
  const { page, problems } = await lab(own, true);
  const readings = page.locator('.lab-readings');
  await readings.getByRole('button', { name: 'Listen with the microphone' }).click();
  await expect
    .poll(() => readings.locator('ol li').count(), { timeout: 30_000 })
    .toBeGreaterThan(1);
  await readings.getByRole('button', { name: 'Stop listening' }).click();
  const text = await readings.innerText();
  const [, pitch] = /([\d.]+)\s±\s[\d.]+\sHz, [\d.]+\scents below/.exec(text) ?? [];
  expect(Math.abs(1200 * Math.log2(Number(pitch) / heard.fundamental))).toBeLessThan(0.6);
  const [, b] = /cents below E\s?4\.\s*B\s=\s*([\d.]+)\s±/.exec(text) ?? [];
  expect(Math.abs(Number(b) / (1e6 * heard.inharmonicity) - 1)).toBeLessThan(0.05);
  expect(text).toMatch(/The wire sounds 1\d\.\d+\s±\s0\.\d+\sthousandths/);
  expect(await readings.locator('[data-partial]').count()).toBeGreaterThan(8);
  expect(problems).toEqual([]);
  // A page that is left early breaks off what it was still asking for.
  await page.waitForLoadState('networkidle');
  await page.reload();
  await comeTo(page, '.lab-readings');
  await expect.poll(() => readings.locator('ol li').count()).toBeGreaterThan(1);

  // In another lab the same ear fills in the pitch that waits.
  await page.waitForLoadState('networkidle');
  await page.goto(`${inject('origin')}labs/in-tune/`);
  await comeTo(page, '.lab-readings');
  await readings.getByRole('button', { name: 'Begin the readings' }).click();
  const fret = readings.getByRole('textbox', { name: /^fret, .* reading 1$/ });
  await fret.fill('0');
  await fret.press('Enter');
  await readings.getByRole('button', { name: 'Listen for the pitch' }).click();
  const frequency = readings.getByRole('textbox', { name: 'pitch heard in Hz, reading 1' });
  await expect.poll(() => frequency.inputValue(), { timeout: 30_000 }).not.toBe('');
  const heardThere = Number(await frequency.inputValue());
  expect(Math.abs(1200 * Math.log2(heardThere / heard.fundamental))).toBeLessThan(0.6);
  expect(problems).toEqual([]);
});

/** What the lab shows each time that it changes: partials of a pluck that rings, or none; dots; plucks counted; what live places say */
interface Moment {
  readonly soFar: number | undefined;
  readonly dots: number;
  readonly counted: number;
  readonly aloud: string;
}

/** Runs in the page: keeps every such moment in `window.moments`. */
function watchMoments(): void {
  const room = document.querySelector('.lab-readings');
  if (!room) throw new Error('no readings');
  const moments: Moment[] = [];
  Object.assign(window, { moments });
  new MutationObserver(() => {
    const hearing = room.querySelector('[data-hearing]')?.textContent;
    moments.push({
      soFar: hearing === undefined ? undefined : Number(/\d+/.exec(hearing)?.[0]),
      dots: room.querySelectorAll('[data-partial]').length,
      counted: room.querySelectorAll('ol li').length,
      aloud: [...room.querySelectorAll('[aria-live], [role="status"], [role="alert"]')]
        .map((place) => place.textContent.trim())
        .join('|'),
    });
  }).observe(room, { subtree: true, childList: true, characterData: true });
}

test('the ladder grows while the string rings, before its pluck counts, and nothing of that is said aloud', async () => {
  const path = join(folder, 'noisy.wav');
  writeFileSync(path, wav(roomThenPluck({ ...heard, fundamental: 82.4, noise: 0.04 })));
  const own = await launch(hearing(path));
  onTestFinished(() => own.close());
  const { page, problems } = await lab(own, true);
  await page.locator('.lab-readings').getByRole('radio').nth(5).check({ force: true });
  await page.evaluate(watchMoments);
  await page.getByRole('button', { name: 'Listen with the microphone' }).click();
  const moments = () =>
    page.evaluate(() => (window as unknown as { moments: readonly Moment[] }).moments);
  /** What was shown of the pluck that came after so many others, while it rang */
  const ringing = (all: readonly Moment[], others: number) =>
    all.flatMap(({ soFar, counted, dots }) =>
      soFar !== undefined && counted === others ? [{ soFar, dots }] : [],
    );
  // A busy machine may leave looks out: of one pluck at least, two are shown.
  const grown = async () => {
    const all = await moments();
    const last = Math.max(0, ...all.map(({ counted }) => counted));
    return Array.from({ length: last }, (_, i) => ringing(all, i)).find(
      (looks) => (looks.at(-1)?.soFar ?? 0) > (looks[0]?.soFar ?? Infinity),
    );
  };
  await expect.poll(grown, { timeout: 40_000 }).toBeDefined();
  const looks = await grown();
  expect(looks?.[0]?.soFar).toBeGreaterThan(8);
  expect(Math.max(...(looks ?? []).map(({ dots }) => dots))).toBeGreaterThan(8);
  const all = await moments();
  expect(ringing(all, 0).length).toBeGreaterThan(0);
  // What a live place says changes only where nothing rings that isn't counted.
  for (const [i, { soFar, aloud }] of all.entries()) {
    expect(aloud).not.toMatch(/so far|hearing/i);
    if (soFar !== undefined && all[i - 1]?.soFar !== undefined)
      expect(aloud, `moment ${i}`).toBe(all[i - 1]?.aloud);
  }
  await page.getByRole('button', { name: 'Stop listening' }).click();
  await expect.poll(() => page.locator('[data-hearing]').count()).toBe(0);
  expect(problems).toEqual([]);
});

test('without a microphone: a word that says what to do, a made-up pluck, and files, good and bad', async () => {
  const { page, close } = await lab(browser, false);
  const readings = page.locator('.lab-readings');
  const says = (what: RegExp) =>
    expect.poll(() => readings.innerText(), { timeout: 20_000 }).toMatch(what);
  await readings.getByRole('button', { name: 'Listen with the microphone' }).click();
  await says(/open a sound file instead/i);
  // A browser without windows has nobody to refuse: what it would say is put in its place.
  await page.evaluate(() => {
    navigator.mediaDevices.getUserMedia = () =>
      Promise.reject(new DOMException('refused', 'NotAllowedError'));
  });
  await readings.getByRole('button', { name: 'Listen with the microphone' }).click();
  await says(/The microphone was refused\..*open a sound file instead/);

  await readings.getByRole('button', { name: 'Try a made-up pluck' }).click();
  await says(/made-up pluck of the model’s own string. It isn’t kept/);
  expect(await readings.locator('ol li').count()).toBe(0);

  const give = (name: string, buffer: Buffer) =>
    readings
      .locator('input[accept="audio/*"]')
      .setInputFiles({ name, mimeType: 'audio/wav', buffer });
  await give('notes.wav', Buffer.from('not a sound at all'));
  await says(/“notes.wav” isn’t a sound that this browser can read/);
  await give('silence.wav', wav(new Float64Array(2 * RATE)));
  await says(/too quiet/);
  // 10 MB: a hundred seconds, with one pluck at the beginning
  const long = new Float64Array(104 * RATE);
  long.set(roomThenPluck(heard));
  await give('long.wav', wav(long));
  await expect.poll(() => readings.locator('ol li').count(), { timeout: 30_000 }).toBe(1);
  await close();
});
