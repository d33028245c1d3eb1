/** The outline of marked cells of a grid, as the edges that lie between a marked cell and one that is not. */

/** An SVG path; a cell's left edge lies at `left(column)` and its right one at `left(column + 1)`, rows are 1 high. */
export function outline(
  marked: readonly (readonly boolean[])[],
  left: (column: number) => number,
): string {
  const is = (row: number, column: number): boolean => marked[row]?.[column] === true;
  return marked
    .flatMap((cells, row) =>
      cells.flatMap((inside, column) => {
        if (!inside) return [];
        const [x, right] = [left(column), left(column + 1)];
        return [
          is(row - 1, column) ? '' : `M${x} ${row}H${right}`,
          is(row + 1, column) ? '' : `M${x} ${row + 1}H${right}`,
          is(row, column - 1) ? '' : `M${x} ${row}V${row + 1}`,
          is(row, column + 1) ? '' : `M${right} ${row}V${row + 1}`,
        ];
      }),
    )
    .join('');
}
