/** How a figure's menu asks the figure for its data, and the figure answers. */
import type { Cell } from '../../instrument/csv.ts';

/** The columns, units included ('frequency / Hz'), and what stands below them. */
export interface FigureTable {
  name: string;
  head: readonly string[];
  rows: readonly (readonly Cell[])[];
}

const EVENT = 'figure-data';

interface Question {
  answer?: Promise<FigureTable>;
}

/** The data of the figure as it stands; undefined where it has none, or is not awake. Fails where its code does not arrive. */
export function askData(figure: Element): Promise<FigureTable> | undefined {
  const question: Question = {};
  figure
    .querySelector(`[data-${EVENT}]`)
    ?.dispatchEvent(new CustomEvent(EVENT, { detail: question }));
  return question.answer;
}

/** An attachment for the element that answers. */
export const answersData = (table: () => Promise<FigureTable>) => (element: Element) => {
  const answer = ({ detail }: CustomEvent<Question>): void => {
    detail.answer = table();
  };
  element.addEventListener(EVENT, answer as EventListener);
  return () => element.removeEventListener(EVENT, answer as EventListener);
};
