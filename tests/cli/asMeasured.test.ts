import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { demoWith } from '../file/shop.ts';
import { ratiowright } from './run.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-measured-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface AnswerJson {
  readonly fitted: { readonly ratioAPerBByVolume: { readonly exact: string } };
}

test('--as-measured counts the delivery of a pump in the ratio [conservation of volume: 12 : 6 × 30 : 21 = 20 : 7, over 0.92]', () => {
  const file = path.join(folder, 'shop.ratiowright');
  writeFileSync(file, demoWith([['machines', 0, 'B', 'pumps', 0, 'measuredDelivery'], { value: { value: '92', unit: '%' } }]));
  const fitted = (...flags: readonly string[]) => {
    const { out } = ratiowright('options', file, '--machine', 'bench-1', '--material', 'e12', ...flags, '--json');
    return (JSON.parse(out) as AnswerJson).fitted.ratioAPerBByVolume.exact;
  };
  expect(fitted()).toBe('20/7');
  expect(fitted('--as-measured')).toBe('500/161');
});
