/** Whether letters of a drawing lie over one another, in the site's faces and in a device's own, which are wider. */
import type { Page } from 'playwright-core';

/** Pairs of words in drawings that overlap, and words that a drawing or the screen cuts; `own` takes the device's faces. */
export async function lettersOver(page: Page, own: boolean): Promise<string[]> {
  await page.evaluate(takeFaces, own);
  const found = await page.evaluate(overlapping);
  await page.evaluate(takeFaces, false);
  return found;
}

/** Runs in the page: every device has one of these, and they are about as wide as any text face is. */
function takeFaces(own: boolean): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    own ? `:root { --sans: 'DejaVu Sans', Verdana, Arial, sans-serif !important; }` : '',
  );
  document.adoptedStyleSheets = [sheet];
}

/** Runs in the page. */
function overlapping(): string[] {
  type Place = readonly [x: number, y: number];
  /** Smallest share of a letter that may be hidden, px */
  const LEAST = 1;
  /** Half the height of capitals, of a letter's size */
  const CAPITALS = 0.36;
  const span = (corners: readonly Place[], [along, down]: Place): [number, number] => {
    const at = corners.map(([x, y]) => x * along + y * down);
    return [Math.min(...at), Math.max(...at)];
  };
  /** By how many px two turned boxes lie over each other, along the direction in which it is least. */
  const over = (one: readonly Place[], two: readonly Place[]): number => {
    let least = Infinity;
    for (const corners of [one, two])
      for (const i of [0, 1]) {
        const [x0, y0] = corners[i] ?? [0, 0];
        const [x1, y1] = corners[i + 1] ?? [0, 0];
        const length = Math.hypot(x1 - x0, y1 - y0) || 1;
        const along: Place = [(x1 - x0) / length, (y1 - y0) / length];
        const [a0, a1] = span(one, along);
        const [b0, b1] = span(two, along);
        least = Math.min(least, Math.min(a1, b1) - Math.max(a0, b0));
      }
    return least;
  };
  const seen = { visibilityProperty: true, opacityProperty: true };
  const found: string[] = [];
  for (const svg of document.querySelectorAll<SVGSVGElement>('main svg')) {
    if (!svg.checkVisibility(seen)) continue;
    const place = svg.closest('figure')?.id || svg.closest('figure')?.ariaLabel || 'a drawing';
    const words = [...svg.querySelectorAll('text')]
      .filter((each) => each.textContent.trim() && each.checkVisibility(seen))
      .map((each) => {
        const box = each.getBBox();
        const to = each.getScreenCTM() ?? new DOMMatrix();
        const middle = box.y + box.height / 2;
        const half = CAPITALS * Number.parseFloat(getComputedStyle(each).fontSize);
        const corners = [
          [box.x, middle - half],
          [box.x + box.width, middle - half],
          [box.x + box.width, middle + half],
          [box.x, middle + half],
        ].map(([x = 0, y = 0]): Place => [to.a * x + to.c * y + to.e, to.b * x + to.d * y + to.f]);
        return { text: each.textContent.trim().replace(/\s+/g, ' ').slice(0, 30), corners };
      });
    for (const [i, one] of words.entries()) {
      const [left, right] = span(one.corners, [1, 0]);
      if (left < -LEAST || right > innerWidth + LEAST)
        found.push(`${place}: “${one.text}” leaves the screen`);
      for (const two of words.slice(i + 1))
        if (over(one.corners, two.corners) > LEAST)
          found.push(`${place}: “${one.text}” over “${two.text}”`);
    }
  }
  return found;
}
