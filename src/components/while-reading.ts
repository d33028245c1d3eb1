// What only a page that is being scrolled needs: where the reader is, the leaders of its figures, and on a narrow screen a bar in
// thumb's reach. It comes with the first move down a sheet.
import './leaders.ts';
import './points-to.ts';
import { follow } from './reading-place.ts';

/** px */
const FROM = 500;
const narrow = matchMedia('(max-width: 63.99rem)');
const bench = document.querySelector<HTMLAnchorElement>('.head a[href$="/bench/"]')?.href;
/** The marked word by which a sentence was left, and who wants to hear of the next one */
let left: HTMLElement | undefined;
let tell: ((word: HTMLElement) => void) | undefined;

const note = ({ target }: Event): void => {
  const word =
    target instanceof Element && target.closest<HTMLElement>('.points-to, main a[href^="#"]');
  if (!word) return;
  left = word;
  tell?.(word);
};

function bring(): void {
  if (scrollY < FROM || !narrow.matches || bench === undefined) return;
  removeEventListener('scroll', bring);
  import('../figures/page/thumb/thumb.ts').then(
    ({ show }) => show({ bench, from: FROM, left, hear: (then) => (tell = then) }),
    () => addEventListener('scroll', bring, { passive: true }),
  );
}

follow();
document.addEventListener('click', note, true);
addEventListener('scroll', bring, { passive: true });
bring();
