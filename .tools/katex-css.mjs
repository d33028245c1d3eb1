/** KaTeX's own stylesheet without its font faces: the site brings its own cut (src/styles/fonts.css). */
export function katexCss() {
  return {
    name: 'katex-css',
    enforce: 'pre',
    transform(code, id) {
      if (!/katex\/dist\/katex\.css/.test(id)) return;
      return { code: code.replace(/@font-face\s*\{[^}]*\}/g, ''), map: null };
    },
  };
}
