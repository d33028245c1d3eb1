/** A face of the device that stands in for the site's own, and is there before the first letter is drawn. */
import type { Page } from 'playwright-core';

declare global {
  interface Window {
    /** Settled once the face is there. */
    standIn: Promise<unknown>;
  }
}

const styles = `:root {
  --serif: 'Newsreader', 'Stand-in', sans-serif;
  --sans: 'Barlow', 'Stand-in', sans-serif;
}`;

/**
 * Draws a face that every device has `width` per cent as wide, where the site's own are missing. The site's styles wait for it, as
 * a device's own faces need no loading: else the page would first be drawn in a third face.
 */
export async function standIn(page: Page, width: number): Promise<void> {
  await page.addInitScript(load, width);
  await page.route(/\.css$/, async (route) => {
    const answer = await route.fetch();
    await page.evaluate(() => window.standIn);
    await route.fulfill({ response: answer, body: `${await answer.text()}\n${styles}` });
  });
}

/** Runs in the page. */
function load(width: number): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@font-face {
    font-family: 'Stand-in';
    src: local('DejaVu Sans'), local('Arial'), local('Helvetica');
    size-adjust: ${width}%;
  }`);
  document.adoptedStyleSheets = [sheet];
  window.standIn = document.fonts.load("16px 'Stand-in'");
}
