import { TryLine } from './TryLine.tsx';

/** What somebody has in mind, held against the machine without changing anything. */
export function Tries(props: { readonly box: (element: HTMLInputElement) => void }) {
  return <TryLine box={props.box} />;
}
