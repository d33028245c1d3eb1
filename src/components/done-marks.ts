// Marks on the map and the list of chapters which exercises this device has seen answered right. The page itself knows nobody.
const DONE = 'speaking-length.done.';

/** Keys of the exercises. It asks the device itself: the door of `instrument/storage.ts` comes with all that reads an instrument. */
function answered(): ReadonlySet<string> {
  try {
    const names = Object.keys(localStorage).filter((name) => name.startsWith(DONE));
    return new Set(names.map((name) => name.slice(DONE.length)));
  } catch {
    return new Set();
  }
}

const done = answered();

if (done.size > 0)
  for (const sheet of document.querySelectorAll<HTMLElement>('[data-keys]')) {
    const keys = (sheet.dataset.keys ?? '').split(' ');
    const right = keys.filter((key) => done.has(key)).length;
    if (right === 0) continue;
    const words = `${right} of ${keys.length} right`;
    const place = sheet.querySelector('[data-right]');
    if (place) place.textContent = words;
    const station = document.querySelector<HTMLElement>(
      `[data-station="${CSS.escape(sheet.dataset.sheet ?? '')}"]`,
    );
    if (!station) continue;
    station.dataset.done = right === keys.length ? 'all' : 'some';
    const said = document.createElement('span');
    said.className = 'unseen';
    said.textContent = `, ${words}`;
    station.querySelector('a')?.append(said);
  }

export {};
