/** The button of the colours: one in the head of a wide page, one in the foot of a narrow one. */
import { chooseTheme, currentTheme, themes } from './theme.ts';

const names = { auto: 'follow the device', light: 'paper', dark: 'blueprint' };

/** Has the buttons say what is chosen. */
export function name(): void {
  for (const each of document.querySelectorAll('button.theme'))
    each.setAttribute('aria-label', `Colours: ${names[currentTheme()]}`);
}

/** Goes on to the next of the three. */
export function turn(): void {
  chooseTheme(themes[(themes.indexOf(currentTheme()) + 1) % themes.length] ?? 'auto');
  name();
}
