/** Moves through a grid by keys: arrows to a neighbour, Home and End along the row, with Ctrl to the corners, Page by five rows. */

interface Place {
  readonly row: number;
  readonly column: number;
}

interface Key {
  readonly key: string;
  readonly ctrlKey?: boolean;
  readonly metaKey?: boolean;
  readonly altKey?: boolean;
}

const PAGE = 5;

/** Where a key leads from `at`, or undefined when it is not one of the grid's. `columns` are those that can be seen. */
export function gridKey(
  { key, ctrlKey = false, metaKey = false, altKey = false }: Key,
  at: Place,
  { rows, columns }: { readonly rows: number; readonly columns: readonly number[] },
): Place | undefined {
  if (metaKey || altKey || columns.length === 0) return undefined;
  const last = rows - 1;
  const row = (to: number): Place => ({ ...at, row: Math.min(last, Math.max(0, to)) });
  // A column that is out of sight counts as the one before it.
  const seen = columns.filter((c) => c <= at.column).length - 1;
  const column = (to: number): Place => ({
    ...at,
    column: columns[Math.min(columns.length - 1, Math.max(0, to))] ?? at.column,
  });
  switch (key) {
    case 'ArrowUp':
      return row(at.row - 1);
    case 'ArrowDown':
      return row(at.row + 1);
    case 'ArrowLeft':
      return column(seen - 1);
    case 'ArrowRight':
      return column(seen + 1);
    case 'PageUp':
      return row(at.row - PAGE);
    case 'PageDown':
      return row(at.row + PAGE);
    case 'Home':
      return { row: ctrlKey ? 0 : at.row, column: column(0).column };
    case 'End':
      return { row: ctrlKey ? last : at.row, column: column(columns.length - 1).column };
    default:
      return undefined;
  }
}
