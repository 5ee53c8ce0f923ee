import type { Word } from '../../../core/src/help/words/index.ts';

/** A word and what it means. */
export function WordLine(props: { readonly word: Word }) {
  return (
    <>
      <dt>{props.word.word}</dt>
      <dd>{props.word.means}</dd>
    </>
  );
}
