// What only a page that is being scrolled needs: where the reader is, the leaders of its figures, and on a narrow screen a bar in
// thumb's reach. It comes with the first move down a sheet.
import './leaders.ts';
import { follow } from './reading-place.ts';

/** px */
const FROM = 500;
const narrow = matchMedia('(max-width: 63.99rem)');
const bench = document.querySelector<HTMLAnchorElement>('.head a[href$="/bench/"]')?.href;
/** The marked word by which a sentence was left before the bar has come */
let left: HTMLElement | undefined;

const note = ({ target }: Event): void => {
  const word = target instanceof Element ? target.closest('.points-to, main a[href^="#"]') : null;
  if (word instanceof HTMLElement) left = word;
};

function bring(): void {
  if (scrollY < FROM || !narrow.matches || bench === undefined) return;
  removeEventListener('scroll', bring);
  import('../figures/page/thumb/thumb.ts').then(
    ({ show }) => {
      document.removeEventListener('click', note, true);
      show({ bench, from: FROM, left });
    },
    () => addEventListener('scroll', bring, { passive: true }),
  );
}

follow();
document.addEventListener('click', note, true);
addEventListener('scroll', bring, { passive: true });
bring();
