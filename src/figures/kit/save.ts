/** Hands a text to the reader as a file of comma-separated values. Returns the name that it is saved under. */
export function saveCsv(name: string, text: string): string {
  const safe = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  const anchor = document.createElement('a');
  anchor.href = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
  anchor.download = `${safe || 'data'}.csv`;
  anchor.click();
  URL.revokeObjectURL(anchor.href);
  return anchor.download;
}
