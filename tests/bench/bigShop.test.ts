import { expect, it } from 'vitest';
import { choicesOf } from '../../core/src/choices.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import { opened, say } from '../file/shop.ts';
import { bigShop } from './window/bigShop.ts';

it('the large shop of the benchmark opens, and is as large as it says [the definition]', () => {
  const plan = resolve(opened(bigShop()), {}, say);
  if (!plan.ok) throw new Error(plan.findings.map(({ what }) => what).join('\n'));
  const { stages, pumps } = choicesOf(plan.value).problem;
  expect(stages.map(({ pairs }) => pairs.length)).toEqual([64 * 64, 64 * 64, 64 * 64]);
  expect(pumps).toHaveLength(16);
});
