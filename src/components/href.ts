// Internal addresses: every link goes through here, so that the site also works below a sub-path.

const base = (import.meta.env.BASE_URL ?? '/').replace(/\/?$/, '/');

/** The address of an internal page or file, given from the site's root without a leading slash. */
export function href(path = ''): string {
  return base + path.replace(/^\/+/, '');
}

/** The address of a chapter. */
export function chapterHref(id: string): string {
  return href(`course/${id}/`);
}
