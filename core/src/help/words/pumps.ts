import { en } from '../../en.ts';
import type { Word } from './word.ts';

/** Pumps, and weighing what they deliver. */
export const pumps: readonly Word[] = [
  {
    word: en`catch`,
    also: [en`catches`],
    means: en`One weighing of both sides, caught apart and unmixed over the same turns.`,
  },
  {
    word: en`confidence`,
    means: en`How sure an interval is: at 95 %, it holds the true value in 95 of 100 such checks.`,
  },
  {
    word: en`delivery`,
    also: [en`deliveries`],
    means: en`What a pump really delivers, as a share of its displacement.`,
  },
  { word: en`displacement`, also: ['cc/rev'], means: en`Volume that a pump moves in one turn.` },
  { word: en`gross`, means: en`Weight of cup and material together.` },
  {
    word: en`interval`,
    means: en`The stretch in which the true mean lies, as sure as the confidence says. More catches make it narrower.`,
  },
  { word: en`module`, means: en`Pitch diameter of a gear divided by its teeth.` },
  { word: en`net`, means: en`Weight of the material alone: gross less tare.` },
  {
    word: en`not proven`,
    means: en`The interval lies partly inside and partly outside the limits: neither pass nor fail. Find the cause or weigh more.`,
  },
  {
    word: en`pulses`,
    means: en`A gear pump delivers tooth by tooth. Too few pulses of the slow side while the mixer fills once blend badly.`,
  },
  {
    word: en`ratio check`,
    also: [en`ratio checks`],
    means: en`Weighing what each side delivers, unmixed, and holding it against the wanted ratio. It proves what teeth only promise.`,
  },
  { word: en`slip`, means: en`What leaks back through the gaps of a pump. It grows with pressure, and the more the thinner the part is.` },
  { word: en`spread`, means: en`How far the catches lie apart.` },
  { word: en`tare`, means: en`Weight of the empty cup.` },
  { word: en`trend`, also: [en`trends`], means: en`How deliveries and off-ratio go from one ratio check to the next.` },
  {
    word: en`unstable`,
    means: en`Catches that differ too much for any verdict to rest on them. No sprocket is proposed until the cause is found.`,
  },
];
