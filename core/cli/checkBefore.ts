import { en } from '../src/en.ts';
import type { CatchAmount } from '../src/expectedCatch.ts';
import { fixed, type Outcome, quantity, type Say, type ShopFile } from '../src/index.ts';
import { exact } from '../src/json.ts';
import { SIDES } from '../src/plan.ts';
import type { Fraction } from '../src/ratio.ts';
import { type BeforeCheck, beforeCheck } from '../src/ratioCheck/beforeCheck.ts';
import { shareText } from '../src/ratioCheck/causes/words.ts';
import { keptChecks, samePumps } from '../src/ratioCheck/history.ts';
import { type CheckSubject, checkRowOf } from '../src/ratioCheck/newCheck.ts';
import { confidenceOf, runOf, scaleOf } from '../src/ratioCheck/readCheck.ts';
import { readTerms } from '../src/ratioCheck/terms.ts';
import { fromSI } from '../src/units.ts';
import { dayOf, type NewWish, runFor, scaleFor, subjectOf } from './checkNew.ts';
import type { Call } from './flags.ts';
import type { CheckAnswer } from './ratioCheck.ts';

/** What to catch, how little and how often; turns are the machine's usual ones where none are given. */
export function before(file: ShopFile, wish: NewWish, call: Call): Outcome<CheckAnswer> {
  const subject = subjectOf(file, wish, call);
  if (!subject.ok) return subject;
  const { plan } = subject.value;
  const scale = scaleFor(file, subject.value, wish);
  if (!scale.ok) return scale;
  // the bounds of the file hold before there is a catch, too
  const row = checkRowOf(file, subject.value, {
    date: dayOf(call),
    run: runFor(wish) ?? { turns: { value: String(plan.catchTurns), unit: '' } },
    scale: scale.value,
    ...(wish.confidence !== null && { confidence: wish.confidence }),
    catches: [{ A: {}, B: {} }],
  });
  if (!row.ok) return row;
  const { value } = row;
  const run = runOf(value.run, readTerms(value.terms));
  if (run === null) throw new RangeError('before: neither turns nor time');
  const motorTurns = run.by === 'turns' ? run.motorTurns : run.time_s.mul(run.motor_rev_per_s);
  const earlier = keptChecks(file.ratioChecks.filter((one) => samePumps(one, value) && one.material === value.material));
  const found = beforeCheck(plan, earlier, { motorTurns, scale: scaleOf(value.scale), confidence: confidenceOf(value) });
  const notes = scale.findings.map(({ what }) => what);
  const text = call.json
    ? JSON.stringify(beforeJson(subject.value, found, notes), null, 2)
    : beforeLines(subject.value, found, notes, call.say).join('\n').replaceAll('\u00a0', ' ');
  return { ok: true, value: { text: `${text}\n`, page: null, passed: true }, findings: [] };
}

function beforeLines({ plan, sheet }: CheckSubject, found: BeforeCheck, notes: readonly string[], say: Say): readonly string[] {
  const { A, B } = found.expected.sides;
  const { limitsOnB } = found.expected;
  const { smallest, leastTurns, repeatability, catchesWorthMaking: worth } = found;
  return [
    `${plan.machine.name}, ${plan.material.name}, ${sheet === null ? en`as fitted` : en`change sheet ${sheet.number}`}${plan.invented ? en` (invented example)` : ''}`,
    en`Both sides unmixed, ${turnsText(found.motorTurns, say)} turns of the motor a catch: pump A ${turnsText(A.pumpTurns, say)}, pump B ${turnsText(B.pumpTurns, say)} turns`,
    en`Expected: A ${amountText(A, say)}, B ${amountText(B, say)}`,
    limitsOnB === null
      ? en`The limits of the material are not given: nothing says what passes.`
      : en`With that A the limits on B are ${amountText(limitsOnB.low, say)} to ${amountText(limitsOnB.high, say)}`,
    ...(smallest === null || leastTurns === null
      ? [en`The smallest catch is not worked out: densities or limits are not given, or the target lies on its limit.`]
      : [
          en`Smallest catch worth making on this scale: A ${quantity(smallest.A.value, 'mass', 'g', 1, say)}, B ${quantity(smallest.B.value, 'mass', 'g', 1, say)}, from ${leastTurns} turns on`,
        ]),
    repeatability === null
      ? en`No earlier check tells how catches repeat here.`
      : en`Off-ratios of earlier catches that agree spread by ${shareText(repeatability, say, 3)} (standard deviation, pooled)`,
    ...(smallest === null
      ? []
      : [
          worth === null
            ? en`Not even ten such catches would do: catch more at a time, or find out why they differ.`
            : en`Make ${worth} catches.`,
        ]),
    ...notes,
  ];
}

const turnsText = (turns: Fraction, say: Say): string => fixed(turns, turns.d === 1n ? 0 : 2, say);
const amountText = ({ mass_kg, volume_m3 }: CatchAmount, say: Say): string =>
  mass_kg.known ? quantity(mass_kg.value, 'mass', 'g', 1, say) : quantity(volume_m3, 'volume', 'cc', 1, say);

function beforeJson({ plan, sheet }: CheckSubject, found: BeforeCheck, notes: readonly string[]): Record<string, unknown> {
  const amount = ({ mass_kg, volume_m3 }: CatchAmount) => ({
    mass_g: mass_kg.known ? exact(fromSI('mass', mass_kg.value, 'g')) : null,
    volume_cc: exact(fromSI('volume', volume_m3, 'cc')),
  });
  const { expected, smallest } = found;
  return {
    format: 'ratiowright before a ratio check',
    version: 1,
    shop: { name: plan.shop, inventedExample: plan.invented },
    machine: plan.machine,
    material: plan.material,
    changeSheet: sheet?.number ?? null,
    motorTurns: exact(found.motorTurns),
    expected: Object.fromEntries(
      SIDES.map((side) => [side, { ...amount(expected.sides[side]), pumpTurns: exact(expected.sides[side].pumpTurns) }]),
    ),
    limitsOnB: expected.limitsOnB && { low: amount(expected.limitsOnB.low), high: amount(expected.limitsOnB.high) },
    smallestCatch: smallest && {
      A_g: exact(fromSI('mass', smallest.A.value, 'g')),
      B_g: exact(fromSI('mass', smallest.B.value, 'g')),
      motorTurns: found.leastTurns,
    },
    repeatability_percent: found.repeatability === null ? null : 100 * found.repeatability,
    catchesWorthMaking: found.catchesWorthMaking,
    notes,
  };
}
