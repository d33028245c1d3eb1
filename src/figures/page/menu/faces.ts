/** The site's fonts as part of a saved drawing, which no stylesheet follows. */

const families = (list: string): string[] =>
  list.split(',').map((family) => family.trim().replace(/^["']|["']$/g, ''));

function* faceRules(): Generator<CSSFontFaceRule> {
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) if (rule instanceof CSSFontFaceRule) yield rule;
  }
}

async function dataUrl(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${response.status} for ${address}`);
  const bytes = new Uint8Array(await response.arrayBuffer());
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return `data:font/woff2;base64,${btoa(binary)}`;
}

/** The rules that bring the faces of the families in `used` (lists as in CSS), font files included. */
export async function facesOf(used: ReadonlySet<string>): Promise<string> {
  const wanted = new Set([...used].flatMap(families));
  const rules = [...faceRules()].filter(({ style }) => {
    const [family = ''] = families(style.getPropertyValue('font-family'));
    return wanted.has(family) && style.getPropertyValue('src').includes('url(');
  });
  const texts = await Promise.all(
    rules.map(async ({ style, parentStyleSheet }) => {
      const [, address = ''] = /url\(["']?([^"')]+)/.exec(style.getPropertyValue('src')) ?? [];
      const from = new URL(address, parentStyleSheet?.href ?? document.baseURI);
      const kept = ['font-family', 'font-weight', 'font-style', 'unicode-range']
        .map((name) => [name, style.getPropertyValue(name)])
        .filter(([, value]) => value)
        .map(([name, value]) => `${name}:${value};`);
      return `@font-face{${kept.join('')}src:url(${await dataUrl(from.href)})}`;
    }),
  );
  return texts.join('');
}
