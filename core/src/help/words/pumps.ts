import { en } from '../../en.ts';
import type { Word } from './word.ts';

/** Pumps, and weighing what they deliver. */
export const pumps: readonly Word[] = [
  {
    word: 'catch',
    also: ['catches'],
    means: en`One weighing of both sides, caught apart and unmixed over the same turns.`,
  },
  {
    word: 'confidence',
    means: en`How sure an interval is: at 95 %, it holds the true value in 95 of 100 such checks.`,
  },
  {
    word: 'delivery',
    also: ['deliveries'],
    means: en`What a pump really delivers, as a share of its displacement.`,
  },
  { word: 'displacement', also: ['cc/rev'], means: en`Volume that a pump moves in one turn.` },
  { word: 'gross', means: en`Weight of cup and material together.` },
  {
    word: 'interval',
    means: en`The stretch in which the true mean lies, as sure as the confidence says. More catches make it narrower.`,
  },
  { word: 'module', means: en`Pitch diameter of a gear divided by its teeth.` },
  { word: 'net', means: en`Weight of the material alone: gross less tare.` },
  {
    word: 'not proven',
    means: en`The interval lies partly inside and partly outside the limits: neither pass nor fail. Find the cause or weigh more.`,
  },
  {
    word: 'pulses',
    means: en`A gear pump delivers tooth by tooth. Too few pulses of the slow side while the mixer fills once blend badly.`,
  },
  {
    word: en`ratio check`,
    also: [en`ratio checks`],
    means: en`Weighing what each side delivers, unmixed, and holding it against the wanted ratio. It proves what teeth only promise.`,
  },
  { word: 'slip', means: en`What leaks back through the gaps of a pump. It grows with pressure, and the more the thinner the part is.` },
  { word: 'spread', means: en`How far the catches lie apart.` },
  { word: 'tare', means: en`Weight of the empty cup.` },
  { word: 'trend', also: ['trends'], means: en`How deliveries and off-ratio go from one ratio check to the next.` },
  {
    word: 'unstable',
    means: en`Catches that differ too much for any verdict to rest on them. No sprocket is proposed until the cause is found.`,
  },
];
