import { useApp } from '../state/app.ts';
import { watchMeasured } from '../state/measured.ts';

/** Shows nothing itself: the band shows what it finds. */
export function Measured() {
  watchMeasured(useApp());
  return null;
}
