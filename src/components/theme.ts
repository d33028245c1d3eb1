// The reader's choice of paper or blueprint. `auto` follows the device and stores nothing.

export const themes = ['auto', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

const key = 'speaking-length.theme';

/** Runs in the head before the first paint; constant, so that a content security policy can hash it. */
export const themeBoot = `document.documentElement.dataset.js='';try{const t=localStorage.getItem('${key}');if(t==='light'||t==='dark')document.documentElement.dataset.theme=t}catch{}`;

export function currentTheme(): Theme {
  const set = document.documentElement.dataset.theme;
  return set === 'light' || set === 'dark' ? set : 'auto';
}

export function chooseTheme(theme: Theme): void {
  if (theme === 'auto') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
  try {
    if (theme === 'auto') localStorage.removeItem(key);
    else localStorage.setItem(key, theme);
  } catch {
    // Storage is full or blocked: the choice holds for this page.
  }
}
