/** What a page weighs on the wire. */
import { gzipSync } from 'node:zlib';
import type { Page, Response } from 'playwright-core';

const ofKind = (responses: Response[], kind: string) =>
  responses.filter((response) => response.request().resourceType() === kind && response.ok());

async function gzipped(responses: Response[]): Promise<number> {
  const bodies = await Promise.all(responses.map((response) => response.body()));
  return bodies.reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0);
}

/** Bytes of client code, compressed with gzip: every script that was loaded and those that stand in the page. */
export async function scriptBytes(page: Page, responses: Response[]): Promise<number> {
  const inline = await page.evaluate(() =>
    [...document.scripts]
      .filter((script) => !script.src && /^(module|text\/javascript|)$/.test(script.type))
      .map((script) => script.text),
  );
  const inlineBytes = inline.length ? gzipSync(inline.join('\n'), { level: 9 }).length : 0;
  return inlineBytes + (await gzipped(ofKind(responses, 'script')));
}

/** Bytes of the styles that were loaded, compressed with gzip. */
export function styleBytes(responses: Response[]): Promise<number> {
  return gzipped(ofKind(responses, 'stylesheet'));
}

/** Bytes of the fonts that were loaded; they are compressed already. */
export async function fontBytes(responses: Response[]): Promise<number> {
  const bodies = await Promise.all(ofKind(responses, 'font').map((response) => response.body()));
  return bodies.reduce((sum, body) => sum + body.length, 0);
}

/** All that came for the first view: how many answers, and their bytes, compressed where a server compresses. */
export async function firstView(responses: Response[]) {
  const answers = responses.filter(
    (response) => response.ok() && response.url().startsWith('http'),
  );
  const fonts = ofKind(answers, 'font');
  const others = answers.filter((response) => !fonts.includes(response));
  return { answers: answers.length, bytes: (await gzipped(others)) + (await fontBytes(answers)) };
}

/** Bytes of a page's own text, compressed with gzip. */
export function htmlBytes(html: string): number {
  return gzipSync(html, { level: 9 }).length;
}
