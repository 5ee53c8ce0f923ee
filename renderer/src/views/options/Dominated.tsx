import { en } from '../../../../core/src/en.ts';
import type { Line, OptionLines } from './optionLines.ts';

/** Folds what an option dominates away under it, or shows it. */
export function Dominated(props: { readonly line: Line; readonly lines: OptionLines; readonly columns: number }) {
  const unfolded = () => props.lines.isUnfolded(props.line);
  return (
    <tr class="fold" classList={{ under: unfolded() }}>
      <td />
      <td colspan={props.columns - 1}>
        <button type="button" class="plain" aria-expanded={unfolded()} onClick={() => props.lines.fold(props.line, unfolded())}>
          {unfolded() ? en`Fold away ${props.line.under.length} dominated` : en`${props.line.under.length} dominated`}
        </button>
      </td>
    </tr>
  );
}
