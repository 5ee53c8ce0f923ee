import { optionFacts } from './facts/index.ts';
import { figuresJson, SCRIPT_SAY } from './figuresJson.ts';
import type { Finding } from './finding.ts';
import { type Given, orNull } from './given.ts';
import type { Answer } from './layOut.ts';
import { asSheetCounts } from './madeRatio.ts';
import type { PlannedOption, StageOption } from './option.ts';
import type { Plan, Pump, SideName } from './plan.ts';
import type { Origin } from './rack.ts';
import { exactText, type Fraction, float, ONE, whole } from './ratio.ts';
import { pumpRatio, sprocketRatio } from './train.ts';
import { fromSI } from './units.ts';

/** An exact value twice: as a reduced fraction `n/d`, and as the nearest number. */
export interface Exact {
  readonly exact: string;
  readonly number: number;
}

export const exact = (value: Fraction): Exact => ({ exact: exactText(value), number: float(value) });
const exactOrNull = (value: Given<Fraction>, unit: (value: Fraction) => Fraction = (same) => same): Exact | null =>
  value.known ? exact(unit(value.value)) : null;
const mm = (length_m: number | null): number | null => (length_m === null ? null : 1000 * length_m);
const HUNDRED = whole(100);

/** The answer as documented JSON: keys carry their unit, every ratio is exact and a number, what is not given is null. */
export function answerJson(answer: Answer, workings = false): Record<string, unknown> {
  const { plan } = answer;
  return {
    format: 'ratiowright options',
    version: 1,
    shop: { name: plan.shop, inventedExample: plan.invented },
    machine: plan.machine,
    material: plan.material,
    rack: plan.rack,
    wanted: wantedJson(plan),
    options: answer.options.map((option, index) => ({ rank: index + 1, ...optionJson(plan, option, workings) })),
    moreOptions: answer.more,
    fitted: optionJson(plan, answer.fitted, workings),
    bestByPartsChanged: answer.best.map(({ changed, noGain, option }) => ({
      partsChanged: changed,
      noGain,
      option: optionJson(plan, option, workings),
    })),
    tradeOff: answer.tradeOff.map((option) => optionJson(plan, option, workings)),
    blocked: {
      options: answer.blocked.options.map((option) => optionJson(plan, option, workings)),
      moreOptions: answer.blocked.more,
      fewestChecks: answer.blocked.fewestChecks,
    },
    counts: answer.counts,
    findings: answer.findings.map(findingJson),
  };
}

function wantedJson({ mix }: Plan): Record<string, unknown> {
  const density = (side: SideName) => exactOrNull(mix.density_kg_per_m3[side], (value) => fromSI('density', value, 'g/cm3'));
  const runAt = (side: SideName) => exactOrNull(mix.runAt_K[side], (value) => fromSI('temperature', value, '°C'));
  return {
    written: mix.sheet.written,
    basis: mix.sheet.basis,
    ratioAPerBByVolume: exact(ONE.div(mix.wantedBPerA)),
    ratioBPerAByVolume: exact(mix.wantedBPerA),
    limits:
      mix.limits === null
        ? null
        : {
            written: mix.limitsWritten,
            lowOffRatio_percent: exact(mix.limits.low.mul(HUNDRED)),
            highOffRatio_percent: exact(mix.limits.high.mul(HUNDRED)),
          },
    runningDensityA_g_per_cm3: density('A'),
    runningDensityB_g_per_cm3: density('B'),
    runAtA_degC: runAt('A'),
    runAtB_degC: runAt('B'),
  };
}

export const senseWord = (e: Fraction): string => (e.s === 0n || e.n === 0n ? 'exact' : e.s > 0n ? 'B-rich' : 'B-lean');

function optionJson(plan: Plan, option: PlannedOption, workings = false): Record<string, unknown> {
  const e = option.offRatio;
  const teeth = option.stages.map((stage) => stage.teeth);
  return {
    inside: option.inside,
    partsChanged: option.changed,
    purchases: option.purchases,
    minutes: option.work_s / 60,
    ratioAPerBByVolume: exact(ONE.div(option.bPerA)),
    ratioBPerAByVolume: exact(option.bPerA),
    offRatio: exact(e),
    offRatio_percent: exact(e.mul(HUNDRED)),
    sense: senseWord(e),
    partsBPer100A: { basis: plan.mix.sheet.basis, ...exact(asSheetCounts(plan, option.bPerA)) },
    pumpRatioAPerB: exact(ONE.div(pumpRatio(option.pumps))),
    sprocketRatioAPerB: exact(ONE.div(sprocketRatio(plan, teeth))),
    pumps: { A: pumpJson(option.pumps.A), B: pumpJson(option.pumps.B) },
    stages: option.stages.map(stageJson),
    figures: figuresJson(optionFacts(plan, option, SCRIPT_SAY), workings),
    findings: option.findings.map(findingJson),
  };
}

export const pumpJson = ({ id, name, displacement_m3_per_rev }: Pump) => ({
  id,
  name,
  displacement_cc_per_rev: exact(fromSI('displacement', displacement_m3_per_rev, 'cc/rev')),
});

function stageJson({ stage, teeth, fit, travel_m, origins }: StageOption): Record<string, unknown> {
  const { loop } = fit;
  return {
    stage: stage.id,
    kind: stage.kind,
    size: stage.size,
    turns: stage.turns,
    driverTeeth: teeth.driver,
    drivenTeeth: teeth.driven,
    fittedDriverTeeth: stage.driver.teeth,
    fittedDrivenTeeth: stage.driven.teeth,
    driverFrom: originJson(origins.driver),
    drivenFrom: originJson(origins.driven),
    pitches: loop?.pitches ?? null,
    presentPitches: orNull(stage.presentPitches),
    centre_mm: mm(loop?.centre_m ?? null),
    presentCentre_mm: mm(orNull(stage.presentCentre_m)),
    travel_mm: mm(travel_m),
    slack_pitches: loop?.slack_pitches ?? null,
    wrapOnSmaller_deg: loop === null ? null : (loop.wrap_rad * 180) / Math.PI,
    freeSpan_mm: mm(loop?.span_m ?? null),
  };
}

function originJson(origin: Origin): Record<string, unknown> {
  switch (origin.from) {
    case 'rack':
      return { from: 'rack', part: origin.piece.part, place: origin.piece.place };
    case 'machine':
      return { from: 'machine', slot: origin.slot.place };
    default:
      return { from: origin.from };
  }
}

export function findingJson({ check, severity, where, what, figure, limit, source, missing }: Finding): Record<string, unknown> {
  return { check, severity, where, what, figure, limit, source, inputMissing: missing };
}
