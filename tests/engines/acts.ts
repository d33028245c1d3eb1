/** What a hand does, as WebDriver writes it: its older form over HTTP and BiDi take the same. */
import type { Hand, Key } from './hand.ts';

/** Code points that WebDriver gives to keys without a sign of their own. */
const keys: Readonly<Record<Key, string>> = {
  Enter: '\uE007',
  PageUp: '\uE00E',
  End: '\uE010',
  Home: '\uE011',
  ArrowLeft: '\uE012',
  ArrowRight: '\uE014',
};

type Perform = (sources: readonly object[]) => Promise<unknown>;

export function acts(perform: Perform): Pick<Hand, 'press' | 'move' | 'release' | 'type' | 'key'> {
  const mouse = async (...actions: object[]): Promise<void> => {
    await perform([
      { type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions },
    ]);
  };
  const keyboard = async (values: readonly string[]): Promise<void> => {
    const actions = values.flatMap((value) => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
    await perform([{ type: 'key', id: 'keyboard', actions }]);
  };
  const to = (x: number, y: number) => ({ type: 'pointerMove', x, y, origin: 'viewport' });
  return {
    press: (x, y) => mouse(to(x, y), { type: 'pointerDown', button: 0 }),
    move: (x, y) => mouse(to(x, y)),
    release: () => mouse({ type: 'pointerUp', button: 0 }),
    type: (text) => keyboard([...text]),
    key: (name) => keyboard([keys[name]]),
  };
}

/** The source of a call in the page that takes its arguments as JSON and gives its result as JSON. */
export const inJson = (inPage: (...args: never[]) => unknown): string =>
  `(text) => JSON.stringify((${inPage})(...JSON.parse(text))) ?? 'null'`;
