import type { Target } from '../src/bestOptions.ts';
import { en } from '../src/en.ts';
import { LARGEST_CSV_BYTES, readMaterials } from '../src/file/materialCsv/index.ts';
import { firstOption } from '../src/firstOption.ts';
import { type Finding, type Outcome, resolve, type Selection, type ShopFile } from '../src/index.ts';
import { visible } from '../src/visible.ts';
import { readText } from './files.ts';
import type { Call } from './flags.ts';

const finding = (severity: Finding['severity'], what: string): Finding => ({
  check: 'materials.list',
  severity,
  where: [],
  what,
  figure: null,
  limit: null,
  source: en`the list of materials`,
  missing: false,
});

/** The shop file with the materials of a list in place of its own; any fault of the list refuses it. Limits in per cent are of B per A where nothing else is said. */
export function withMaterials(file: ShopFile, list: string, call: Call): Outcome<ShopFile> {
  const text = readText(list, LARGEST_CSV_BYTES);
  if (!text.ok) return text;
  const { materials, faults, notes } = readMaterials(text.value, { say: call.say, limitsMean: '% of B per A', taken: [] });
  const said = faults.map(({ line, column, what }) =>
    finding('blocks', column === null ? en`${list}, line ${line}: ${what}` : en`${list}, line ${line}, ${column}: ${what}`),
  );
  if (faults.length === 0 && materials.length === 0) said.push(finding('blocks', en`${list} holds no material.`));
  const [first, ...others] = said;
  if (first !== undefined) return { ok: false, findings: [first, ...others] };
  const missing = materials.flatMap((one) => one.notes.map((what) => finding('notes', en`${list}, line ${one.line}: ${what}`)));
  return {
    ok: true,
    value: { ...file, materials: materials.map(({ material }) => material) },
    findings: [...missing, ...notes.map((what) => finding('notes', `${list}: ${what}`))],
  };
}

/** Every material of the file with the best option of the machine, or what it lacks; a machine that does not resolve refuses all. */
export function targetsOf(file: ShopFile, selection: Selection, { say }: Call): Outcome<readonly Target[]> {
  const outcomes = file.materials.map(({ id, name }) => ({
    id,
    name: visible(name),
    outcome: resolve(file, { ...selection, material: id }, say),
  }));
  const findings = outcomes.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.findings));
  const ofMachine = findings.filter(({ where }) => where[0] !== 'materials');
  const [first, ...others] = ofMachine.filter((one, index) => ofMachine.findIndex(({ what }) => what === one.what) === index);
  if (first !== undefined) return { ok: false, findings: [first, ...others] };
  const value = outcomes.map(({ id, name, outcome }): Target => {
    if (!outcome.ok) return { id, name, plan: null, missing: outcome.findings.map(({ what }) => what) };
    const plan = outcome.value;
    return { id, name, plan, best: firstOption(plan) };
  });
  return { ok: true, value, findings: [] };
}
