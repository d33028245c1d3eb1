/**
 * How a part that comes later is fetched. A build's own way sees to scripts to be fetched ahead as well, of which there are none
 * here (`leaner` in astro.config.mjs); this one brings the part's style and then the part.
 */
const helper = (base) => `
const sheets = {};
const bring = (path) => {
  const href = new URL(${JSON.stringify(base)} + path, location.href).href;
  return (sheets[href] ??= [...document.querySelectorAll('link[rel=stylesheet]')].some((each) => each.href === href)
    ? undefined
    : new Promise((done, fail) => {
        const link = document.createElement('link');
        link.rel = 'stylesheet';
        link.href = href;
        link.onload = done;
        link.onerror = () => {
          delete sheets[href];
          link.remove();
          fail(new Error(href));
        };
        document.head.append(link);
      }));
};
export const __vitePreload = async (load, paths = []) => {
  await Promise.all(paths.map(bring));
  return load();
};
`;

/** A plugin that takes the place of the build's own. */
export function later() {
  let base = '/';
  return {
    name: 'later',
    enforce: 'pre',
    apply: 'build',
    configResolved: (config) => {
      base = config.base;
    },
    load: (id) => (id === '\0vite/preload-helper.js' ? helper(base) : undefined),
  };
}
