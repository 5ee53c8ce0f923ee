/** How much is run. */
export interface Form {
  readonly name: 'quick' | 'full';
  /** ordinary targets */
  readonly targets: number;
  /** searches of a target that stands alone */
  readonly repeats: number;
  /** a single search that takes longer is stopped, and its line says so */
  readonly search_ms: number;
  /** a series that takes longer ends with the searches it got, three at least, and its line says so */
  readonly series_ms: number;
  /** how long searches of the kind run before the clock starts: a dragged target is searched many times over */
  readonly warmUp_ms: number;
  /** nested loops that should take longer are not run: their rate is multiplied */
  readonly loops_ms: number;
  /** a slide that takes longer ends with the steps it got */
  readonly slide_ms: number;
}
export const FULL: Form = {
  name: 'full',
  targets: 15,
  repeats: 7,
  search_ms: 60_000,
  series_ms: 45_000,
  warmUp_ms: 1_500,
  loops_ms: 120_000,
  slide_ms: 20_000,
};
export const QUICK: Form = {
  name: 'quick',
  targets: 5,
  repeats: 3,
  search_ms: 3_000,
  series_ms: 4_000,
  warmUp_ms: 300,
  loops_ms: 1_000,
  slide_ms: 3_000,
};

export const stoppedNote = ({ search_ms }: Form): string => `stopped after ${search_ms / 1000} s`;
