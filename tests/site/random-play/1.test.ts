import { shareOf } from '../pages.ts';
import { unshaken } from '../random-play.ts';

unshaken(shareOf(import.meta.filename));
