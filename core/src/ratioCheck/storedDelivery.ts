import type { TypedWithError } from '../entry.ts';
import { whole } from '../ratio.ts';
import type { MeasuredDelivery } from './delivery.ts';

/** Far finer than any ± of a weighing. */
const PLACES = 4;

/**
 * A measured delivery as the pump keeps it, in per cent.
 *
 * @returns four places, so that it can be read and typed; its ± is never that small
 * @source our choice
 * @example storedDelivery(0.98971234 ± 0.0038)  // { value: 98.9712 %, uncertainty: 0.38 % }
 */
export function storedDelivery({ share, uncertainty }: MeasuredDelivery): TypedWithError {
  const plain = (text: string) => ({ value: text.includes('.') ? text.replace(/\.?0+$/, '') : text, unit: '%' });
  return {
    value: plain(share.value.mul(whole(100)).round(PLACES).toString(PLACES)),
    ...(uncertainty !== null && { uncertainty: plain((100 * uncertainty.value).toFixed(PLACES)) }),
  };
}
