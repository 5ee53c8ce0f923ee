import type { FieldPage } from '../fieldLine.ts';

const WORK = 'A watch, at one change done without haste; the grey figure is used until then.';

/** What the machine is to deliver, what loads it, and what its changes take: the folds of the Machine page. */
export const running: FieldPage = {
  title: 'Wanted, tanks, load and work',
  lines: [
    {
      place: 'machines.*.wantedFlow',
      name: 'Wanted flow',
      means: 'How much of A and B together is to come; the dial setting follows from it.',
      found: 'What the work needs: order, mould or bead.',
    },
    {
      place: 'machines.*.wantedShot',
      name: 'Wanted shot',
      means: 'The same as a shot: so much in so long, as 400 g in 6 s.',
      found: 'What the mould takes, and the time it may take.',
    },
    {
      place: 'machines.*.batch.amount',
      name: 'Batch to be made',
      means: 'How much is to be made; what each tank must hold follows from it.',
      found: 'The order. A mass or a volume.',
    },
    {
      place: 'machines.*.batch.of',
      name: 'Batch of',
      means: 'Whether the batch counts the mixture, A alone or B alone.',
      found: 'The order.',
    },
    {
      place: 'machines.*.A|B.tank.fill',
      name: 'Fill of the tank',
      means: 'How much is in the tank at the start.',
      found: 'Sight glass, dip stick, or weight over density.',
    },
    {
      place: 'machines.*.A|B.tank.lowMark',
      name: 'Low mark of the tank',
      means: 'The level at which the tank must be filled again.',
      found: 'The mark on the tank, or where its switch sits.',
    },
    {
      place: 'machines.*.mixerVolume',
      name: 'Mixer volume',
      means: 'What the mixer holds; it tells whether both parts come in often enough to blend.',
      found: 'Data sheet of the mixer, or fill it with water and weigh.',
    },
    {
      place: 'machines.*.A|B.pressure',
      name: 'Pressure across the pump',
      means: 'Outlet less inlet pressure at the flow that is run.',
      found: 'Gauges on the machine while it runs.',
    },
    {
      place: 'machines.*.A|B.mechanicalEfficiency',
      name: 'Mechanical efficiency',
      means: 'The share of the shaft’s work that the pump turns into pressure and flow.',
      found: 'Data sheet of the pump.',
    },
    {
      place: 'machines.*.serviceFactor',
      name: 'Service factor',
      means: 'What the chain’s load is multiplied by for rough running.',
      found: 'Handbook of the chain’s maker, by motor and kind of work; 1 is smooth.',
    },
    {
      place: 'machines.*.catchTurns',
      name: 'Turns a catch',
      means: 'Turns of the motor for one catch; expected weights on the sheet are for so many.',
      found: 'As many as fill your cups without spilling.',
    },
    { place: 'machines.*.minutes.sprocket', name: 'Sprocket, minutes', means: 'Work to change one sprocket.', found: WORK },
    { place: 'machines.*.minutes.chainLength', name: 'Chain length, minutes', means: 'Work to add or remove links.', found: WORK },
    { place: 'machines.*.minutes.centre', name: 'Centre setting, minutes', means: 'Work to set one centre distance anew.', found: WORK },
    { place: 'machines.*.minutes.pump', name: 'Pump, minutes', means: 'Work to change one pump.', found: WORK },
  ],
};
