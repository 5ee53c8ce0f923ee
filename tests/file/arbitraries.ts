import fc from 'fast-check';
import { FORMAT, VERSION } from '../../core/src/file/envelope.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';
import type { MaterialRow } from '../../core/src/file/material.ts';
import type { QuoteRecord } from '../../core/src/file/quoteRecord.ts';
import type { RackRow } from '../../core/src/file/rack.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import type { UnfinishedCheck } from '../../core/src/file/unfinishedCheck.ts';
import type { TypedQuantity } from '../../core/src/reading.ts';

/** Valid shop files of every shape: trees of up to five shafts, one to three parts, everything optional there or not. */

const id = fc.stringMatching(/^[A-Za-z0-9][A-Za-z0-9._-]{0,8}$/);
const ids = (least: number, most: number) => fc.uniqueArray(id, { minLength: least, maxLength: most });
const line = fc.oneof(fc.string({ maxLength: 30, unit: 'grapheme' }), fc.constantFrom('', ' ', 'a\\b "c"', '−2,5 °C', 'x'.repeat(200)));
const yesNo = fc.boolean();
const teeth = fc.integer({ min: 5, max: 400 });

/** Ways to type a number between 1 and some whole number; all are kept as typed. */
const typed = (most: number) =>
  fc
    .tuple(fc.integer({ min: 1, max: most - 1 }), fc.constantFrom('', '.0', '.50', ',5', ' 1/2', '.(3)', 'e0'))
    .map(([whole, tail]) => `${whole}${tail}`);
const quantity = (most: number, ...units: readonly [string, ...string[]]): fc.Arbitrary<TypedQuantity> =>
  fc.record({ value: typed(most), unit: fc.constantFrom(...units) });

const length = quantity(300, 'mm', 'in', 'cm', '"');
const speed = quantity(200, 'rpm', '1/min', 'rev/s');
const percent = quantity(99, '%');
const volume = quantity(500, 'L', 'mL', 'US gal');
const temperature = quantity(140, '°C', '°F', 'F');
const minutes = quantity(60, 'min', 's');

const slot = fc.record(
  { teeth, mayChange: yesNo, bore: length, keyway: length, teethFrom: teeth, teethTo: teeth, guard: length },
  { requiredKeys: [] },
);
const centre = fc.oneof(fc.record({ fixed: length }), fc.record({ from: length, to: length }));
const chain = fc.constantFrom('08B', '06B', '40', '08A', '35');

const stage = (stageId: string) =>
  fc.record(
    {
      id: fc.constant(stageId),
      name: line,
      kind: fc.constant('chain'),
      size: chain,
      driver: slot,
      driven: slot,
      pitches: fc.integer({ min: 4, max: 10_000 }),
      centreNow: length,
      centre,
      takeUp: quantity(20, 'pitches'),
      offsetLink: yesNo,
    },
    { requiredKeys: ['id', 'kind', 'size', 'driver', 'driven'] },
  );

const pump = (pumpId: string) =>
  fc.record(
    {
      id: fc.constant(pumpId),
      name: line,
      displacement: quantity(500, 'cc/rev', 'mL/rev', 'in3/rev'),
      tolerance: percent,
      speedFrom: speed,
      speedTo: speed,
      pressureLimit: quantity(500, 'bar', 'psi'),
      gear: fc.record({ teeth: fc.integer({ min: 4, max: 200 }), module: length, gapWidth: length }, { requiredKeys: ['teeth'] }),
      measuredDelivery: fc.record({ value: percent, uncertainty: percent }, { requiredKeys: ['value'] }),
    },
    { requiredKeys: ['id'] },
  );

const side = (shafts: readonly string[]): fc.Arbitrary<MachineRow['A']> =>
  ids(1, 3).chain((pumps) =>
    fc.record(
      {
        shaft: fc.constantFrom(...shafts),
        fitted: fc.constantFrom(...pumps),
        pumps: fc.tuple(...pumps.map(pump)),
        pressure: quantity(300, 'bar'),
        mechanicalEfficiency: percent,
        tank: fc.record({ fill: volume, lowMark: volume }, { requiredKeys: [] }),
      },
      { requiredKeys: ['shaft', 'fitted', 'pumps'] },
    ),
  );

/** Each shaft but the first is turned by one before it, through a stage of its own or coupled; the order in the file is any. */
const drive = fc
  .tuple(ids(1, 5), ids(4, 4), fc.array(fc.tuple(fc.nat(), yesNo), { minLength: 4, maxLength: 4 }))
  .chain(([shafts, stages, links]) => {
    const rows = shafts.map((shaft, index) => {
      const [by = 0, coupled = true] = links[index - 1] ?? [];
      const stageId = stages[index - 1];
      if (index === 0 || stageId === undefined) return { id: shaft };
      const turner = shafts[by % index] ?? shaft;
      return { id: shaft, turnedBy: coupled ? { shaft: turner } : { shaft: turner, stage: stageId } };
    });
    const used = rows.flatMap((row) => row.turnedBy?.stage ?? []);
    return fc.record({
      shafts: fc.shuffledSubarray(rows, { minLength: rows.length }),
      stages: fc.tuple(...used.map(stage)),
      A: side(shafts),
      B: side(shafts),
    });
  });

const machine = (machineId: string, racks: readonly string[]): fc.Arbitrary<MachineRow> =>
  drive.chain((parts) =>
    fc.record(
      {
        id: fc.constant(machineId),
        name: line,
        note: line,
        ...(racks.length > 0 && { rack: fc.constantFrom(...racks) }),
        motor: fc.record(
          { speed, usable: fc.record({ from: percent, to: percent }), dialStep: percent, ratedTorque: quantity(500, 'N m', 'lbf in') },
          { requiredKeys: [] },
        ),
        shafts: fc.constant(parts.shafts),
        stages: fc.constant(parts.stages),
        A: fc.constant(parts.A),
        B: fc.constant(parts.B),
        wantedFlow: quantity(900, 'cc/min', 'L/min'),
        mixerVolume: volume,
        serviceFactor: quantity(9, ''),
        catchTurns: fc.integer({ min: 1, max: 100_000 }),
        minutes: fc.record({ sprocket: minutes, chainLength: minutes, centre: minutes, pump: minutes }, { requiredKeys: [] }),
        checklist: fc.array(line, { maxLength: 6 }),
        search: fc.record(
          {
            wheels: fc.constantFrom('rack', 'rack and purchases', 'any'),
            purchases: fc.integer({ min: 1, max: 8 }),
            teeth: fc.record({ from: teeth, to: teeth }),
            anyPump: yesNo,
            openShared: yesNo,
          },
          { requiredKeys: [] },
        ),
      },
      { requiredKeys: ['id', 'name', 'motor', 'shafts', 'stages', 'A', 'B'] },
    ),
  );

const density = fc.record({ value: quantity(20, 'g/cm3', 'kg/L', 'lb/gal'), at: temperature }, { requiredKeys: ['value'] });
const part = fc.record(
  {
    name: line,
    density,
    secondDensity: density,
    expansion: fc.record({ value: fc.constantFrom('0.0007', '7e-4', '0,01', '-0.01', '0'), unit: fc.constantFrom('1/K', '/°C', 'per K') }),
    runAt: temperature,
    viscosity: quantity(9000, 'mPa s', 'cP'),
    densityUncertainty: percent,
    temperatureUncertainty: quantity(50, 'K', '°F'),
  },
  { requiredKeys: [] },
);
const twoParts = fc.constantFrom('100 : 38.9', '2:1', '38B:100A', '2,5:1', '1/3 : 1');
const threeParts = fc.constantFrom('4 : 1 : 1', '100A:40B:5C');
const limitText = fc.constantFrom('-5', '-2', '0', '2', '20/7', '40', '-100', '100', '7,5');
const ratio = fc.oneof(
  fc.record({ basis: fc.constantFrom('weight', 'volume'), parts: twoParts, at: temperature }, { requiredKeys: [] }),
  fc.record({ basis: fc.constantFrom('weight', 'volume'), perHundredA: fc.constantFrom('38.9', '40', '0', '-1') }, { requiredKeys: [] }),
  fc.record(
    {
      basis: fc.constantFrom('weight', 'volume'),
      parts: fc.oneof(twoParts, threeParts),
      thirdInto: fc.constantFrom('A', 'B'),
      at: temperature,
    },
    { requiredKeys: [] },
  ),
);

/** Each measure with figures that lie within its limits, or with none yet. */
const MEASURED = [
  { by: 'EEW', value: '190' },
  { by: 'epoxy value', value: '0,51' },
  { by: 'AHEW' },
  { by: 'amine molar mass', value: '103', hydrogens: '5' },
  { by: 'anhydride molar mass', value: '168', factor: '0.9' },
  { by: '% NCO', value: '31.0' },
  { by: 'NCO equivalent weight', value: '135 1/2' },
  { by: 'OH number', value: '165' },
  { by: 'OH equivalent weight', value: '340' },
  { by: 'water' },
  { by: 'inert' },
  {},
] as const;
const ingredient = (ingredientId: string) =>
  fc
    .tuple(
      fc.record({ id: fc.constant(ingredientId), name: line, parts: typed(200) }, { requiredKeys: ['id'] }),
      fc.constantFrom(...MEASURED),
    )
    .map(([row, measured]) => ({ ...row, ...measured }));
const filled = ids(0, 4).chain((names) => fc.record({ ingredients: fc.tuple(...names.map(ingredient)) }));
const ofSystem = (system: 'epoxy' | 'urethane', askedAs: 'resinIn' | 'isocyanateIn') =>
  fc.record(
    {
      system: fc.constant(system),
      [askedAs]: fc.constantFrom('A', 'B'),
      index: fc.constantFrom('105', '100', '95,5'),
      A: filled,
      B: filled,
    },
    { requiredKeys: [] },
  );
const chemistry = fc.oneof(ofSystem('epoxy', 'resinIn'), ofSystem('urethane', 'isocyanateIn'));

const described = (materialId: string) =>
  fc.record(
    {
      id: fc.constant(materialId),
      name: line,
      note: line,
      otherRatio: fc.record({ basis: fc.constantFrom('weight', 'volume'), parts: fc.oneof(twoParts, threeParts) }),
      limits: fc.record({
        definition: fc.constantFrom('% of B per A', '% of A per B', 'points of B in the total', 'parts of B', 'index points'),
        low: limitText,
        high: limitText,
      }),
      A: part,
      B: part,
      third: part,
      premix: part,
      cautions: fc.array(line, { maxLength: 4 }),
    },
    { requiredKeys: ['id', 'name', 'A', 'B'] },
  );

/** The ratio as a sheet prints it, or from chemistry, or not yet known. */
const mix = fc.oneof(fc.record({ ratio }, { requiredKeys: [] }), fc.record({ chemistry }, { requiredKeys: [] }));

const material = (materialId: string): fc.Arbitrary<MaterialRow> =>
  fc.tuple(described(materialId), mix).map(([row, given]) => ({ ...row, ...given }));

const piece = (pieceId: string) =>
  fc.record(
    {
      id: fc.constant(pieceId),
      kind: fc.constant('chain'),
      size: chain,
      teeth,
      bore: length,
      keyway: length,
      quantity: fc.integer({ min: 0, max: 10_000 }),
      part: line,
      place: line,
    },
    { requiredKeys: ['id', 'kind', 'size', 'teeth', 'quantity'] },
  );

/** Each row of prices is of ten teeth of its own. */
const priceRow = (priceId: string, index: number) =>
  fc.record({
    id: fc.constant(priceId),
    kind: fc.constant('chain'),
    size: chain,
    from: fc.integer({ min: 10 * index + 10, max: 10 * index + 14 }),
    to: fc.integer({ min: 10 * index + 15, max: 10 * index + 19 }),
    price: fc.constantFrom('0', '18', '18.5', '18,50', '1000000'),
  });

const rack = (rackId: string): fc.Arbitrary<RackRow> =>
  fc.tuple(ids(0, 4), ids(0, 3)).chain(([pieces, priced]) =>
    fc.record(
      {
        id: fc.constant(rackId),
        name: line,
        note: line,
        pieces: fc.tuple(...pieces.map(piece)),
        prices: fc.tuple(...priced.map(priceRow)),
      },
      { requiredKeys: ['id', 'name', 'pieces'] },
    ),
  );

const pair = fc.record({ driver: teeth, driven: teeth });

const mounted = fc.record({ pumps: fc.record({ A: id, B: id }), teeth: fc.array(pair, { maxLength: 3 }) });

const sheet = (sheetId: string): fc.Arbitrary<ShopFile['changeSheets'][number]> =>
  fc.record(
    {
      id: fc.constant(sheetId),
      number: line,
      date: line,
      machine: id,
      material: id,
      mounted,
      before: mounted,
      lines: fc.array(line, { maxLength: 4 }),
      fittedOn: line,
    },
    { requiredKeys: ['id', 'number', 'date', 'machine', 'material', 'mounted', 'lines'] },
  );

const stretch = fc.record({ from: fc.integer({ min: 0, max: 50 }), to: fc.double({ min: 50, max: 100, noNaN: true }) });
const marks = fc.array(fc.record({ at: fc.integer({ min: 0, max: 100 }), text: line }), { maxLength: 3 });
const texts = fc.array(line, { maxLength: 3 });
const flag = fc.record(
  {
    at: fc.integer({ min: 0, max: 100 }),
    row: fc.integer({ min: 0, max: 20 }),
    toLeft: yesNo,
    words: line,
    limits: stretch,
    best: fc.integer({ min: 0, max: 100 }),
  },
  { requiredKeys: ['at', 'toLeft', 'words'] },
);
const rule = fc.record({
  sentence: line,
  lanes: fc.integer({ min: 0, max: 20 }),
  hill: fc.constantFrom('', 'M0.00 100L0.00 40.5L1.25 40.5Z'),
  strokes: fc.constantFrom('', 'M3.2 0V100M4 0V100'),
  above: marks,
  below: marks,
  gaps: fc.array(stretch, { maxLength: 3 }),
  flags: fc.array(flag, { maxLength: 3 }),
});
const quotePage = fc.record({
  title: line,
  number: line,
  date: line,
  valid: line,
  machine: line,
  customer: line,
  note: line,
  shop: line,
  window: line,
  legend: line,
  invented: line,
  cautions: texts,
  reach: fc.array(fc.record({ what: line, figure: line, against: line }), { maxLength: 3 }),
  materials: fc.record({ heads: texts, rows: fc.array(texts, { maxLength: 3 }), rest: line }),
  definitions: texts,
  add: texts,
  assumptions: texts,
  signatures: texts,
  footer: line,
});
const quote = (quoteId: string): fc.Arbitrary<QuoteRecord> =>
  fc.record(
    {
      id: fc.constant(quoteId),
      number: line,
      date: line,
      machine: id,
      window: fc.record({ low: fc.constantFrom('1', '4/5', '0,8'), high: fc.constantFrom('5', '14/3') }),
      tolerance: fc.constantFrom({ value: '2', unit: '%' }, { value: '1/3', unit: '%' }),
      customer: line,
      validUntil: line,
      page: quotePage,
      rule,
    },
    { requiredKeys: ['id', 'number', 'date', 'machine', 'window', 'tolerance', 'page', 'rule'] },
  );

const mass = quantity(5000, 'g', 'kg', 'oz', 'lb');
const caught = fc.record({ gross: mass, tare: mass, net: mass, volume: quantity(5000, 'cc', 'mL', 'L') }, { requiredKeys: [] });
const exact = fc.tuple(fc.bigInt({ min: 1n, max: 10n ** 30n }), fc.bigInt({ min: 1n, max: 10n ** 30n })).map(([n, d]) => `${n}/${d}`);
const exactPair = fc.record({ A: exact, B: exact });
const givenPair = fc.record({ A: exact, B: exact }, { requiredKeys: [] });
const day = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
  .map((one) => one.toISOString().slice(0, 10));

const ratioCheck = (checkId: string): fc.Arbitrary<ShopFile['ratioChecks'][number]> =>
  fc.record(
    {
      id: fc.constant(checkId),
      date: day,
      machine: id,
      material: id,
      changeSheet: id,
      mounted,
      run: fc.record({ turns: quantity(1000, ''), time: quantity(1000, 's', 'min'), dial: quantity(100, '%') }, { requiredKeys: [] }),
      scale: fc.record({ step: quantity(10, 'g'), tared: yesNo, uncertainty: quantity(10, 'g') }, { requiredKeys: ['step', 'tared'] }),
      confidence: fc.constantFrom({ value: '95', unit: '%' }, { value: '0,99', unit: '' }),
      catches: fc.array(fc.record({ A: caught, B: caught, leftOut: line }, { requiredKeys: ['A', 'B'] }), { minLength: 1, maxLength: 4 }),
      by: line,
      note: line,
      terms: fc.record(
        {
          wantedBPerA: exact,
          limits: fc.record({ low: exact.map((text) => `-${text}`), high: exact }),
          basis: fc.constantFrom('weight' as const, 'volume' as const),
          written: line,
          limitsWritten: line,
          density: givenPair,
          densityBOverA: exact,
          displacement: exactPair,
          tolerance: givenPair,
          newDelivery: givenPair,
          pumpTurns: exactPair,
          motorSpeed: exact,
        },
        {
          requiredKeys: [
            'wantedBPerA',
            'basis',
            'written',
            'density',
            'displacement',
            'tolerance',
            'newDelivery',
            'pumpTurns',
            'motorSpeed',
          ],
        },
      ),
    },
    { requiredKeys: ['id', 'date', 'machine', 'material', 'mounted', 'scale', 'catches', 'terms'] },
  );

const written = fc.record({ gross: line, tare: line, net: line, volume: line }, { requiredKeys: [] });

/** Every box holds whatever was typed. */
const unfinished: fc.Arbitrary<UnfinishedCheck> = fc.record(
  {
    machine: id,
    changeSheet: id,
    date: line,
    runBy: fc.constantFrom('turns' as const, 'time' as const),
    turns: line,
    time: line,
    dial: line,
    step: line,
    weighing: fc.constantFrom('gross' as const, 'tared' as const, 'net' as const),
    uncertainty: line,
    confidence: line,
    volumes: yesNo,
    catches: fc.array(fc.record({ A: written, B: written, leftOut: line }, { requiredKeys: ['A', 'B'] }), { maxLength: 4 }),
    by: line,
    note: line,
  },
  { requiredKeys: ['machine', 'runBy', 'weighing', 'catches'] },
);

export const shopFiles: fc.Arbitrary<ShopFile> = fc
  .tuple(ids(0, 2), ids(0, 2), ids(0, 2), ids(0, 1), ids(0, 2), ids(0, 2))
  .chain(([machines, materials, racks, sheets, quotes, checks]) =>
    fc.record(
      {
        format: fc.constant(FORMAT),
        version: fc.constant(VERSION),
        writtenBy: line,
        shop: fc.record({ name: line, invented: yesNo, currency: line, note: line }, { requiredKeys: ['name'] }),
        machines: fc.tuple(...machines.map((one) => machine(one, racks))),
        materials: fc.tuple(...materials.map(material)),
        racks: fc.tuple(...racks.map(rack)),
        changeSheets: fc.tuple(...sheets.map(sheet)),
        quotePages: fc.tuple(...quotes.map(quote)),
        ratioChecks: fc.tuple(...checks.map(ratioCheck)),
        unfinishedChecks: fc.array(unfinished, { maxLength: 2 }),
      },
      { requiredKeys: ['format', 'version', 'shop', 'machines', 'materials', 'racks', 'changeSheets', 'ratioChecks'] },
    ),
  );
