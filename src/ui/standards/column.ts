export interface Column<Row> {
  readonly name: string;
  readonly show: (row: Row) => string;
  /** What to sort by; the shown text when left out. */
  readonly by?: (row: Row) => number | string;
  /** Other words that the row is found by. */
  readonly also?: (row: Row) => string;
  readonly numeric?: boolean;
  /** Words, which may stand in several lines; sizes and numbers may not. */
  readonly wraps?: boolean;
  /** The same, in small letters. */
  readonly note?: boolean;
}

/** A row on a telephone: what it is, then what tells it from its neighbours. */
export interface Lines {
  readonly head: string;
  readonly tail: string;
  readonly under: string;
}
