import { figuresJson, SCRIPT_SAY } from './figuresJson.ts';
import type { RatioCheckRow } from './file/ratioCheckRow.ts';
import type { ShopFile } from './file/shopFile.ts';
import type { Finding } from './finding.ts';
import { exact, findingJson } from './json.ts';
import type { Teeth } from './plan.ts';
import { wantedOn } from './ratioCheck/amounts.ts';
import { checkFacts } from './ratioCheck/checkFacts.ts';
import type { Judged } from './ratioCheck/judge.ts';
import type { CheckTerms } from './ratioCheck/model.ts';
import { bySide, catchesJson, deliveryJson, furtherJson, inUnit, percent, resultJson, trendJson } from './ratioCheckResultJson.ts';
import { verdictReason } from './ratioCheckWords.ts';
import { fromSI } from './units.ts';

/** A ratio check as documented JSON: keys carry their unit, every ratio is exact and a number, what is not given is null. */
export function ratioCheckJson(file: ShopFile, judged: Judged, findings: readonly Finding[], workings: boolean): Record<string, unknown> {
  const { row, evaluation, smallest, proposal } = judged;
  const { input, verdict, unstable, further } = evaluation;
  return {
    format: 'ratiowright ratio check',
    version: 1,
    shop: { name: file.shop.name, inventedExample: file.shop.invented === true },
    ...aboutJson(file, row),
    wanted: wantedJson(input.terms),
    run:
      input.run === null
        ? null
        : input.run.by === 'turns'
          ? { motorTurns: exact(input.run.motorTurns) }
          : { time_s: exact(input.run.time_s), motorSpeed_rpm: exact(fromSI('speed', input.run.motor_rev_per_s, 'rpm')) },
    scale: {
      step_g: exact(fromSI('mass', input.scale.step_kg, 'g')),
      readings: input.scale.readings,
      uncertainty_g: inUnit(input.scale.uncertainty_kg, 'mass', 'g'),
    },
    confidence_percent: 100 * input.confidence,
    catches: catchesJson(evaluation),
    ...resultJson(evaluation),
    verdict,
    reason: verdictReason(evaluation, SCRIPT_SAY),
    stable: evaluation.counted.length < 2 || input.terms.limits === null ? null : unstable.length === 0,
    unstable,
    further: further && furtherJson(further, evaluation.weighed),
    delivery: bySide((side) => deliveryJson(evaluation, side)),
    smallestCatch: smallest && {
      A_g: exact(fromSI('mass', smallest.A.value, 'g')),
      B_g: exact(fromSI('mass', smallest.B.value, 'g')),
    },
    causes: judged.causes.map(({ cause, title, state, what, source }) => ({ cause, title, state, what, source })),
    proposal:
      typeof proposal === 'string'
        ? { none: proposal }
        : {
            fittedOffRatio_percent: percent(proposal.fitted),
            best: proposal.best && {
              pumps: proposal.best.mounted.pumps,
              teeth: teethJson(proposal.best.mounted.teeth),
              offRatio_percent: percent(proposal.best.offRatio),
              partsChanged: proposal.best.partsChanged,
            },
          },
    trends: { deliveryA: trendJson(judged.delivery.A), deliveryB: trendJson(judged.delivery.B), offRatio: trendJson(judged.offRatio) },
    ...(workings && { figures: figuresJson(checkFacts(judged, SCRIPT_SAY), true) }),
    findings: findings.map(findingJson),
  };
}

function aboutJson(file: ShopFile, row: RatioCheckRow): Record<string, unknown> {
  const named = (rows: readonly { readonly id: string; readonly name: string }[], id: string) => ({
    id,
    name: rows.find((one) => one.id === id)?.name ?? null,
  });
  return {
    check: file.ratioChecks.some(({ id }) => id === row.id) ? row.id : null,
    date: row.date,
    by: row.by ?? null,
    machine: named(file.machines, row.machine),
    material: named(file.materials, row.material),
    changeSheet: file.changeSheets.find(({ id }) => id === row.changeSheet)?.number ?? null,
    pumps: row.mounted.pumps,
    teeth: teethJson(row.mounted.teeth),
  };
}

function wantedJson(terms: CheckTerms): Record<string, unknown> {
  const { limits } = terms;
  return {
    written: terms.written,
    basis: terms.basis,
    ratioBPerAByVolume: exact(terms.wantedBPerA),
    ratioBPerAByWeight: terms.densityBOverA.known ? exact(wantedOn(terms, true)) : null,
    limits: limits && {
      written: terms.limitsWritten,
      lowOffRatio_percent: percent(limits.low),
      highOffRatio_percent: percent(limits.high),
    },
  };
}

const teethJson = (teeth: readonly Teeth[]) => teeth.map(({ driver, driven }) => ({ driverTeeth: driver, drivenTeeth: driven }));
