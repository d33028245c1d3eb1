/** Hands something to the reader as a file. Returns the name that it is saved under: `name` made safe, with its ending. */
export function save(name: string, ending: string, content: Blob): string {
  const safe = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  const anchor = document.createElement('a');
  anchor.href = URL.createObjectURL(content);
  anchor.download = `${safe || 'data'}.${ending}`;
  anchor.click();
  URL.revokeObjectURL(anchor.href);
  return anchor.download;
}

/** Hands a text of comma-separated values to the reader as a file. */
export const saveCsv = (name: string, text: string): string =>
  save(name, 'csv', new Blob([text], { type: 'text/csv;charset=utf-8' }));
