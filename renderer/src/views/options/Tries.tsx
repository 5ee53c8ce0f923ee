import { TryLine } from './TryLine.tsx';
import { TryRatio } from './TryRatio.tsx';

export interface TriesProps extends Record<string, unknown> {
  /** Hands over the box for teeth. */
  readonly box: (element: HTMLInputElement) => void;
  /** Hands over what opens the box for a ratio. */
  readonly ratio: (open: () => void) => void;
}

/** What somebody has in mind, held against the machine without changing anything. */
export function Tries(props: TriesProps) {
  return (
    <>
      <TryLine box={props.box} />
      <TryRatio box={props.ratio} />
    </>
  );
}
