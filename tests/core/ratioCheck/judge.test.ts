import { describe, expect, test } from 'vitest';
import type { ShopFile } from '../../../core/src/index.ts';
import { type Judged, judge } from '../../../core/src/ratioCheck/judge.ts';
import { readTerms } from '../../../core/src/ratioCheck/terms.ts';
import { furtherText, intervalBasis, meetingText, proposalText, verdictReason } from '../../../core/src/ratioCheckWords.ts';
import { demoFile } from './demoChecks.ts';

const say = { decimal: '.', system: 'metric' } as const;
const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ') ?? null;

function judged(file: ShopFile, id: string): Judged {
  const index = file.ratioChecks.findIndex((one) => one.id === id);
  const row = file.ratioChecks[index];
  if (row === undefined) throw new RangeError(`no check ${id}`);
  const outcome = judge(file, row, ['ratioChecks', index], say);
  if (!outcome.ok) throw new RangeError(outcome.findings[0].what);
  return outcome.value;
}

describe('the kept checks of the invented example', () => {
  const file = demoFile();
  const [first, second, third] = ['check-0001', 'check-0002', 'check-0003'].map((id) => judged(file, id));
  if (first === undefined || second === undefined || third === undefined) throw new RangeError('three checks');

  test('verdicts: pass, pass, not proven, each with its reason', () => {
    expect([first, second, third].map(({ evaluation }) => evaluation.verdict)).toEqual(['pass', 'pass', 'not proven']);
    expect(plain(verdictReason(first.evaluation, say))).toBe(
      'The interval, −0.66 to −0.34 %, lies wholly inside the limits, −2.86 to +2.86 % (+ is B-rich).',
    );
    expect(plain(verdictReason(third.evaluation, say))).toContain('−4.55 to +0.38 %, reaches over the limits');
    expect(plain(intervalBasis(first.evaluation, say))).toBe(
      'Fieller’s interval on the pairs, 95 %, Student’s t with 2 degrees of freedom, 4.303. Half a scale step of 0.10 g each way is in it, two readings a net weight.',
    );
  });

  test('the third is to find its cause first: catches that disagree, then wear of B', () => {
    expect(third.causes.map(({ title, state }) => `${state}: ${title}`).slice(0, 2)).toEqual([
      'likely: Catches that disagree',
      'possible: Wear',
    ]);
    expect(third.evaluation.further && furtherText(third.evaluation.further, true, say)).toContain('Find the cause first');
    expect(proposalText(third.proposal, say)).toContain('no sprockets are proposed');
  });

  test('by the second the closest with the pumps as measured is 17 to 24', () => {
    expect(plain(proposalText(second.proposal, say))).toContain(
      'the fitted teeth stand at 1.18 % B-lean; the closest that can be built is 17 to 24, 0.006 % B-lean, 2 parts to change',
    );
  });

  test('B falls from check to check; two stable checks draw no line', () => {
    expect(third.delivery.B.values.map(({ value, stable }) => [Number(value.toFixed(4)), stable])).toEqual([
      [0.9965, true],
      [0.9897, true],
      [0.9802, false],
    ]);
    expect(third.delivery.B.line).toBeNull();
    expect(meetingText(third.delivery.B, say)).toBeNull();
  });
});

describe('a pump that wears, told by four stable checks', () => {
  const worn = (): ShopFile => {
    const file = demoFile();
    const [pump] = file.machines[0]?.B.pumps ?? [];
    const [kept] = file.ratioChecks;
    if (pump === undefined || kept === undefined) throw new RangeError('the demo has a pump and a check');
    pump.leastDelivery = { value: '95', unit: '%' };
    const B = ['101.9', '101.4', '100.9', '100.4'];
    file.ratioChecks = B.map((net, index) => ({
      ...kept,
      id: `c${index}`,
      date: `2026-0${index + 1}-01`,
      catches: [0, 1, 2].map((at) => ({
        A: { net: { value: `244.${3 + at}`, unit: 'g' } },
        B: { net: { value: String(Number(net) + at / 10), unit: 'g' } },
      })),
    }));
    return file;
  };

  test('the day on which it reaches the least delivery, with its ends', () => {
    const last = judged(worn(), 'c3');
    const [meeting] = last.delivery.B.meetings;
    expect(meeting?.limit).toBe(0.95);
    expect(plain(meetingText(last.delivery.B, say))).toMatch(
      /^If it goes on so, it reaches 95\.00 % about 2026-\d\d-\d\d, between 2026-\d\d-\d\d and 2026-\d\d-\d\d at 95 %\.$/,
    );
    expect(last.causes[0]).toMatchObject({ title: 'Wear', state: 'likely' });
  });

  test('checks of a later day do not speak in one of an earlier', () => {
    expect(judged(worn(), 'c1').delivery.B.values).toHaveLength(2);
  });
});

test('a check is judged by the terms of its day, whatever the material says since', () => {
  const file = demoFile();
  const before = judged(file, 'check-0001').evaluation;
  const material = file.materials.find(({ id }) => id === 'u40');
  const [pump] = file.machines[0]?.B.pumps ?? [];
  if (material === undefined || pump === undefined) throw new RangeError('the demo has U40');
  material.limits = { definition: '% of B per A', low: '-0.1', high: '0.1' };
  pump.displacement = { value: '7', unit: 'cc/rev' };
  const after = judged(file, 'check-0001').evaluation;
  expect(after.verdict).toBe('pass');
  expect(after.offRatio.value.equals(before.offRatio.value)).toBe(true);
  expect(after.delivery.B?.share.value.equals(before.delivery.B?.share.value ?? 0)).toBe(true);
});

test('a machine that has gone leaves its checks, and says so', () => {
  const file = demoFile();
  file.machines = file.machines.filter(({ id }) => id !== 'bench-1');
  const { evaluation, proposal, causes } = judged(file, 'check-0001');
  expect(evaluation.verdict).toBe('pass');
  expect(proposal).toBe('the machine has changed');
  expect(causes.find(({ title }) => title === 'Wrong teeth fitted')?.state).toBe('not looked for');
});

test('kept terms are exact', () => {
  const [row] = demoFile().ratioChecks;
  if (row === undefined) throw new RangeError('no check');
  const terms = readTerms(row.terms);
  expect(terms.limits?.low.toFraction()).toBe('-1/35');
  expect(terms.wantedBPerA.toFraction()).toBe(row.terms.wantedBPerA);
});
