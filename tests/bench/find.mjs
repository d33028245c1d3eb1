/** What it takes to open a book of 300 instruments and to find one by typing, in a browser. It prints and judges nothing. */
import { writeBook } from '../../src/instrument/book/file.ts';
import { open, phone } from '../site/kit.ts';
import { median, rounded } from './race.mjs';

const birds = ['Dunlin', 'Knot', 'Curlew', 'Ruff', 'Avocet', 'Stint'];
const strings = ['E4 10', 'B3 13', 'G3 17', 'D3 26', 'A2 36', 'E2 46'].map((text, i) => {
  const [note, gauge] = text.split(' ');
  return { note, kind: i < 3 ? 'plain' : 'wound', gauge: Number(gauge) };
});
const many = Array.from({ length: 300 }, (_, i) => {
  const name = `${birds[i % birds.length]} ${i}`;
  const scale = { treble: 0.6477, bass: 0.6477 };
  const instrument = { name, scale, a4: 440, strings };
  const dates = { created: i, changed: i, revision: 1 };
  return {
    id: `many-${i}`,
    kind: 'instrument',
    name,
    reference: `ticket ${1000 + i}`,
    instrument,
    ...dates,
  };
});

/** Runs in the page: ms from a typed text to the frame that shows what was found. */
function timeOf(text) {
  const field = document.querySelector('#book-find');
  const start = performance.now();
  field.value = text;
  field.dispatchEvent(new Event('input', { bubbles: true }));
  return new Promise((done) =>
    requestAnimationFrame(() => setTimeout(() => done(performance.now() - start))),
  );
}

export async function benchFind(browser, home) {
  const { page, close } = await open(browser, `${home}book/`, { viewport: phone });
  const press = (name) => page.getByRole('button', { name }).click();
  await press('Open the book');
  const text = writeBook(many, new Date());
  const file = { name: 'book.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await page.locator('input[type="file"]').first().setInputFiles(file);
  await press('Take it in');
  await page.locator('#book-find').waitFor();
  const rows = {};
  for (const typed of ['c', 'cur', '1236', 'ruff 1003', '']) {
    const times = [];
    for (let i = 0; i < 9; i += 1) {
      times.push(await page.evaluate(timeOf, typed));
      await page.evaluate(timeOf, 'x');
    }
    rows[`"${typed}"`] = { ms: rounded(median(times)) };
  }
  console.log('Finding among 300 instruments, from the key to the frame that shows it');
  console.table(rows);
  await close();
}
