import { en } from '../../en.ts';
import type { Word } from './word.ts';

/** The machine and its drive. */
export const drive: readonly Word[] = [
  { word: en`bore`, means: en`The hole of a sprocket, which fits the shaft.` },
  {
    word: en`centre distance`,
    also: [en`centre`, en`centres`],
    means: en`Distance of two shafts, middle to middle. With the teeth it decides how long the chain must be.`,
  },
  {
    word: en`chain-on diameter`,
    also: [en`chain on`],
    means: en`The diameter that turns with the chain lying on the sprocket; its plates stand above the teeth. It is what must clear the guard.`,
  },
  { word: en`clearance`, means: en`Room that is left between two things that must not touch.` },
  { word: en`dial`, means: en`The setting of the motor’s speed, in per cent of its full speed.` },
  {
    word: en`drive`,
    also: [en`drives`],
    means: en`All shafts, stages and pumps of a machine, from the motor to the last pump.`,
  },
  { word: en`drive kind`, also: [en`kind`], means: en`What joins two shafts: chain, belt or a pair of gears.` },
  {
    word: en`driver`,
    also: [en`driven`],
    means: en`The driver is the sprocket that pulls, on the side of the motor; the driven one is pulled.`,
  },
  { word: en`fitted`, means: en`What is on the machine now.` },
  { word: en`jackshaft`, means: en`A shaft between motor and pump, turned by one stage and turning the next.` },
  { word: en`keyway`, means: en`The groove for the key that holds a sprocket on its shaft.` },
  {
    word: en`offset link`,
    also: [en`half link`],
    means: en`A link that is inner at one end and outer at the other, so that a chain may have an odd count of pitches. It carries less.`,
  },
  {
    word: en`pitch`,
    also: [en`pitches`],
    means: en`Distance from pin to pin of a chain. A chain’s length is counted in pitches.`,
  },
  { word: en`pitch diameter`, means: en`Diameter of the circle on which the pins of the chain lie when it is on the sprocket.` },
  {
    word: en`rack`,
    means: en`The sprockets in stock. What is on the machines is not counted as stock.`,
  },
  {
    word: en`service factor`,
    means: en`What the load of a chain is multiplied by for rough running; 1 is smooth.`,
  },
  { word: en`slack`, means: en`How far the loose side of a chain can be moved to and fro at its middle.` },
  { word: en`slot`, also: [en`slots`], means: en`A place on a shaft where a sprocket sits.` },
  {
    word: en`speed ripple`,
    means: en`How much the speed of a driven shaft swings within one tooth, since a chain lies on its sprocket as a polygon.`,
  },
  {
    word: en`sprocket`,
    also: [en`sprockets`, en`wheel`, en`wheels`],
    means: en`A toothed wheel for a chain. “Wheel” stands for sprocket, gear and pulley alike.`,
  },
  { word: en`stage`, also: [en`stages`], means: en`One chain with its two sprockets.` },
  {
    word: en`take-up`,
    means: en`How much slack the tensioner absorbs, counted in pitches.`,
  },
  { word: en`train`, also: [en`trains`], means: en`The stages from the motor to one pump.` },
  { word: en`travel`, means: en`How far a shaft must be moved so that a chain of a whole number of pitches is taut.` },
  {
    word: en`wear`,
    means: en`A chain grows longer as its joints wear; the sheet says what 20 pitches may measure. A worn pump delivers less.`,
  },
  { word: en`wrap`, means: en`The angle over which a chain lies on its smaller sprocket. Too little lets it jump.` },
];
