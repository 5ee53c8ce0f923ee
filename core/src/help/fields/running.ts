import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

const WORK = en`A watch, at one change done without haste; the grey figure is used until then.`;

/** What the machine is to deliver, what loads it, and what its changes take: the folds of the Machine page. */
export const running: FieldPage = {
  title: en`Wanted, tanks, load and work`,
  lines: [
    {
      place: 'machines.*.wantedFlow',
      name: en`Wanted flow`,
      means: en`How much of A and B together is to come; the dial setting follows from it.`,
      found: en`What the work needs: order, mould or bead.`,
    },
    {
      place: 'machines.*.wantedShot',
      name: en`Wanted shot`,
      means: en`The same as a shot: so much in so long, as 400 g in 6 s.`,
      found: en`What the mould takes, and the time it may take.`,
    },
    {
      place: 'machines.*.batch.amount',
      name: en`Batch to be made`,
      means: en`How much is to be made; what each tank must hold follows from it.`,
      found: en`The order. A mass or a volume.`,
    },
    {
      place: 'machines.*.batch.of',
      name: en`Batch of`,
      means: en`Whether the batch counts the mixture, A alone or B alone.`,
      found: en`The order.`,
    },
    {
      place: 'machines.*.A|B.tank.fill',
      name: en`Fill of the tank`,
      means: en`How much is in the tank at the start.`,
      found: en`Sight glass, dip stick, or weight over density.`,
    },
    {
      place: 'machines.*.A|B.tank.lowMark',
      name: en`Low mark of the tank`,
      means: en`The level at which the tank must be filled again.`,
      found: en`The mark on the tank, or where its switch sits.`,
    },
    {
      place: 'machines.*.mixerVolume',
      name: en`Mixer volume`,
      means: en`What the mixer holds; it tells whether both parts come in often enough to blend.`,
      found: en`Data sheet of the mixer, or fill it with water and weigh.`,
    },
    {
      place: 'machines.*.A|B.pressure',
      name: en`Pressure across the pump`,
      means: en`Outlet less inlet pressure at the flow that is run.`,
      found: en`Gauges on the machine while it runs.`,
    },
    {
      place: 'machines.*.A|B.mechanicalEfficiency',
      name: en`Mechanical efficiency`,
      means: en`The share of the shaft’s work that the pump turns into pressure and flow.`,
      found: en`Data sheet of the pump.`,
    },
    {
      place: 'machines.*.serviceFactor',
      name: en`Service factor`,
      means: en`What the chain’s load is multiplied by for rough running.`,
      found: en`Handbook of the chain’s maker, by motor and kind of work; 1 is smooth.`,
    },
    {
      place: 'machines.*.catchTurns',
      name: en`Turns a catch`,
      means: en`Turns of the motor for one catch; expected weights on the sheet are for so many.`,
      found: en`As many as fill your cups without spilling.`,
    },
    { place: 'machines.*.minutes.sprocket', name: en`Sprocket, minutes`, means: en`Work to change one sprocket.`, found: WORK },
    { place: 'machines.*.minutes.chainLength', name: en`Chain length, minutes`, means: en`Work to add or remove links.`, found: WORK },
    {
      place: 'machines.*.minutes.centre',
      name: en`Centre setting, minutes`,
      means: en`Work to set one centre distance anew.`,
      found: WORK,
    },
    { place: 'machines.*.minutes.pump', name: en`Pump, minutes`, means: en`Work to change one pump.`, found: WORK },
  ],
};
