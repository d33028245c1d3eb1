/**
 * How long the page is held up while it listens to a made microphone, on a phone-sized page with the processor slowed four times. The
 * goal is that no frame waits for more than 50 ms. A task's time is the main thread's own on the processor; a wait is by the clock, which
 * other programs on the same machine lengthen. It prints and judges nothing.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { hearing, roomThenPluck, wav } from '../site/heard.ts';
import { launch, open, phone } from '../site/kit.ts';
import { rounded } from './race.mjs';
import { record, tasks } from './trace.mjs';

const SECONDS = 12;
const GOAL = 50;
const plucks = {
  'low E, 82 Hz': { string: 5, fundamental: 82.4, inharmonicity: 8e-5 },
  'high E, 330 Hz': { string: 0, fundamental: 329.6, inharmonicity: 2e-5 },
};

/** Runs in the page: how long it took each time until the page came round to a timer of nothing, in ms, in `window.waits`. */
function watchWaits() {
  window.waits = [];
  let last = performance.now();
  const again = () => {
    const now = performance.now();
    window.waits.push(now - last);
    last = now;
    setTimeout(again);
  };
  setTimeout(again);
}

async function heardBy(browser, home, string, slowed) {
  const { page, close } = await open(browser, `${home}labs/listen/`, { viewport: phone });
  await page.context().grantPermissions(['microphone']);
  await page.locator('.lab-readings').scrollIntoViewIfNeeded();
  await page.getByRole('button', { name: 'Begin the readings' }).click();
  const listen = page.getByRole('button', { name: 'Listen with the microphone' });
  await listen.waitFor();
  await page.getByRole('radio').nth(string).check({ force: true });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  await listen.click();
  await page.getByRole('button', { name: 'Stop listening' }).waitFor();
  await page.evaluate(watchWaits);
  const trace = await record(session, () => page.waitForTimeout(1000 * SECONDS), [
    'devtools.timeline',
    'disabled-by-default-devtools.timeline',
  ]);
  const took = tasks(trace);
  const waits = await page.evaluate(() => window.waits);
  const heard = await page.locator('.lab-readings ol li').count();
  await session.detach();
  await close();
  return {
    'plucks heard': heard,
    'longest task, ms': rounded(Math.max(...took)),
    [`tasks over ${GOAL} ms`]: took.filter((each) => each > GOAL).length,
    'tasks over 16.7 ms': took.filter((each) => each > 1000 / 60).length,
    'longest wait by the clock, ms': rounded(Math.max(...waits)),
    [`waits over ${GOAL} ms`]: waits.filter((wait) => wait > GOAL).length,
  };
}

export async function benchFrames(home) {
  const folder = mkdtempSync(join(tmpdir(), 'speaking-length-bench-'));
  const rows = {};
  try {
    for (const [name, pluck] of Object.entries(plucks)) {
      const file = join(folder, 'pluck.wav');
      writeFileSync(file, wav(roomThenPluck(pluck)));
      const browser = await launch(hearing(file));
      for (const slowed of [1, 4])
        rows[`${name}${slowed > 1 ? `, processor slowed ${slowed} times` : ''}`] = await heardBy(
          browser,
          home,
          pluck.string,
          slowed,
        );
      await browser.close();
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
  console.log(
    `\nHow long the page is held up while it listens, in ${SECONDS} s each: the goal is no more than ${GOAL} ms`,
  );
  console.table(rows);
}
