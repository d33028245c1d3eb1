// @vitest-environment happy-dom
/** Words that would give a guess away: blank until it is made in the drawing, in words, or looked up; never blank for who has guessed before. */
import { beforeEach, expect, test, vi } from 'vitest';

const page = (id: string): string => `
  <p><span data-veil="${id}"><span class="under">a quarter</span></span></p>
  <p><span data-veil="other"><span class="under">something else</span></span></p>
  <div class="guess" data-guess="${id}"><div class="place"></div><details class="answer"></details></div>`;
const veiled = (): string[] =>
  [...document.querySelectorAll<HTMLElement>('[data-veil]')].map((e) => e.dataset.veil ?? '');
async function come(): Promise<void> {
  vi.resetModules();
  await import('../../src/components/veil.ts');
}
let count = 0;
let id = '';
beforeEach(() => {
  localStorage.clear();
  // What an earlier load listens for is of another guess.
  id = `guess-${(count += 1)}`;
  document.body.innerHTML = page(id);
});
const opens = (): void => {
  const answer = document.querySelector('details');
  if (!answer) throw new Error('no answer');
  answer.open = true;
  answer.dispatchEvent(new Event('toggle'));
};

test('they wait', async () => {
  await come();
  expect(veiled()).toEqual([id, 'other']);
});

test('a guess in the drawing lifts its own, and opens the words', async () => {
  await come();
  document
    .querySelector('.place')
    ?.dispatchEvent(new CustomEvent('guess-shown', { bubbles: true }));
  expect(veiled()).toEqual(['other']);
  expect(document.querySelector('details')?.open).toBe(true);
});

test('what is drawn anew afterwards is not veiled again', async () => {
  await come();
  opens();
  document.body.insertAdjacentHTML(
    'beforeend',
    `<g data-veil="${id}"></g><g data-veil="third"></g>`,
  );
  document.querySelector('.under')?.parentElement?.setAttribute('data-veil', id);
  await new Promise((done) => setTimeout(done));
  expect(veiled()).toEqual(['other', 'third']);
});

test('an answer that is opened lifts them, and the drawing hears of it', async () => {
  await come();
  let heard = 0;
  document.querySelector('.guess')?.addEventListener('guess-opened', () => (heard += 1));
  opens();
  expect(veiled()).toEqual(['other']);
  // Once for each load of the page in this file.
  expect(heard).toBeGreaterThan(0);
});

test.each([
  ['guess.ID', 'Half'],
  ['guess.hand.ID', '{"values":[1],"made":[true],"shown":true}'],
])('who has guessed before finds them there: %s', async (name, text) => {
  localStorage.setItem(`speaking-length.${name.replace('ID', id)}`, text);
  await come();
  expect(veiled()).toEqual(['other']);
});

test('a guess that was begun and not shown lifts nothing', async () => {
  localStorage.setItem(
    `speaking-length.guess.hand.${id}`,
    '{"values":[1],"made":[true],"shown":false}',
  );
  await come();
  expect(veiled()).toEqual([id, 'other']);
});
