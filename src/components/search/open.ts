// Shows what is found. It comes when the search is first opened, see ready.ts, and so do the finder and its index.
import type { Group, Run } from './find.ts';

const dialog = document.querySelector<HTMLDialogElement>('dialog.search');
const part = <E extends Element>(selector: string) => dialog?.querySelector<E>(selector);
const input = part<HTMLInputElement>('input');
const said = part<HTMLElement>('.said');
const found = part<HTMLElement>('.found');

let find: ((query: string) => Group[]) | undefined;
let loading: Promise<void> | undefined;

const say = (text: string) => said && (said.textContent = text);

async function load(address: string): Promise<void> {
  const [{ finder }, pieces] = await Promise.all([
    import('./find.ts'),
    fetch(address).then((response) => {
      if (!response.ok) throw new Error(`${address}: ${response.status}`);
      return response.json();
    }),
  ]);
  find = finder(pieces);
}

function element(name: string, className: string, runs: readonly Run[]): HTMLElement {
  const node = document.createElement(name);
  node.className = className;
  for (const { text, hit } of runs) {
    const mark = hit ? node.appendChild(document.createElement('mark')) : node;
    mark.append(text);
  }
  return node;
}

function listed({ page, hits }: Group): Node[] {
  const heading = element('h2', '', [{ text: page, hit: false }]);
  const list = document.createElement('ul');
  for (const { title, excerpt, url } of hits) {
    const link = document.createElement('a');
    link.href = url;
    link.append(element('span', 'title', title), element('span', 'excerpt', excerpt));
    list.appendChild(document.createElement('li')).append(link);
  }
  return [heading, list];
}

function show(): void {
  const query = input?.value.trim() ?? '';
  if (!find || query === '') {
    found?.replaceChildren();
    say(find ? 'A word is enough, and its beginning too: gauge, bend, relief.' : 'One moment.');
    return;
  }
  const groups = find(query);
  const count = groups.reduce((sum, { hits }) => sum + hits.length, 0);
  found?.replaceChildren(...groups.flatMap(listed));
  say(count > 0 ? `${count} found.` : `Nothing here mentions “${query}”. Try a shorter word.`);
}

/** In the dialog that stands open. */
export function begin(): void {
  if (!dialog) return;
  // At first the field was empty: what stands in it has been typed while this was on its way.
  if (loading) input?.select();
  loading ??= load(dialog.dataset.index ?? '').catch(() => (loading = undefined));
  show();
  void loading?.then(() => {
    if (find) show();
    else say('The index didn’t load. Close the search and open it again.');
  });
}

/** The links and the field as one column that the arrows walk. */
function walk(event: KeyboardEvent): void {
  const links = [...(found?.querySelectorAll<HTMLElement>('a') ?? [])];
  const at = links.findIndex((link) => link === document.activeElement);
  if (event.key === 'ArrowDown') links[Math.min(at + 1, links.length - 1)]?.focus();
  else if (event.key === 'ArrowUp' && at >= 0) (at === 0 ? input : links[at - 1])?.focus();
  else if (event.key === 'Enter' && document.activeElement === input) links[0]?.click();
  else return;
  event.preventDefault();
}

input?.addEventListener('input', show);
dialog?.addEventListener('keydown', walk);
dialog?.addEventListener('click', ({ target }) => {
  // A press beside the sheet, on the button, or on a link, which may lead to this very page.
  if (target === dialog || (target instanceof Element && target.closest('a, .close')))
    dialog.close();
});
