import { en } from '../../en.ts';
import { PRICE } from '../../price.ts';
import { TEETH_RANGE } from '../../teethRange.ts';
import { type FieldPage, FROM_LIST } from '../fieldLine.ts';

const piece = (key: string): string => `racks.*.pieces.*.${key}`;
const price = (key: string): string => `racks.*.prices.*.${key}`;

/** The rack on the Machine page, and what its wheels cost. */
export const rack: FieldPage = {
  title: en`Rack and prices`,
  lines: [
    {
      place: 'racks.*.pieces',
      name: en`Rack in one line`,
      means: en`The whole stock in one line: size, then teeth, ranges and counts.`,
      found: en`A walk along the rack: 08B: 15-20, 22-25, 30x2. What is on the machines is not counted.`,
      limits: () => en`Enter sets the rack; nothing happens before.`,
    },
    {
      place: 'racks.*.newBore',
      name: en`Bore of new rows`,
      means: en`The bore that new pieces of the one line get.`,
      found: en`Caliper, or the part number.`,
      limitsOf: piece('bore'),
    },
    { place: 'racks.*.name', name: en`Name of the rack`, means: en`What the rack is called in lists.`, found: en`Your own words.` },
    { place: 'racks.*.note', name: en`Note of the rack`, means: en`Anything worth knowing of the rack.`, found: en`Your own words.` },
    { place: piece('kind'), name: en`Kind`, means: en`The kind of drive that the piece is for.`, found: en`Look at the piece.` },
    {
      place: piece('size'),
      limits: FROM_LIST,
      name: en`Size`,
      means: en`The chain number that the piece is for.`,
      found: en`Stamped on its hub.`,
    },
    { place: piece('teeth'), name: en`Teeth`, means: en`Teeth of the piece.`, found: en`Stamped on the hub, or counted.` },
    {
      place: piece('bore'),
      name: en`Bore`,
      means: en`Bore of the piece; an empty one fits any shaft, with a note.`,
      found: en`Caliper, or the part number.`,
    },
    { place: piece('keyway'), name: en`Keyway`, means: en`Width of its keyway; it is printed, not checked.`, found: en`Caliper.` },
    {
      place: piece('quantity'),
      name: en`Quantity`,
      means: en`Pieces on the rack, without those on the machines; 0 for one that is lent out.`,
      found: en`Count them.`,
    },
    { place: piece('part'), name: en`Part number`, means: en`Printed on the change sheet; kept as text.`, found: en`Label or catalogue.` },
    { place: piece('place'), name: en`Place`, means: en`Where it hangs; printed on the change sheet.`, found: en`The mark on the rack.` },
    { place: price('kind'), name: en`Kind with a price`, means: en`The kind of drive that the price is for.`, found: en`Price list.` },
    {
      place: price('size'),
      limits: FROM_LIST,
      name: en`Size with a price`,
      means: en`The chain number that the price is for.`,
      found: en`Price list.`,
    },
    {
      place: price('from'),
      also: [price('to')],
      name: en`Teeth with a price`,
      means: en`From which to which number of teeth the price holds.`,
      found: en`Price list.`,
    },
    { place: price('price'), name: en`Price of one`, means: en`What one such wheel costs.`, found: en`Price list.`, limits: () => PRICE },
    {
      place: 'reach.price.size',
      name: en`Size of a new price`,
      means: en`The chain number that the new price is for.`,
      found: en`The list holds the sizes of this machine.`,
    },
    {
      place: 'reach.price.teeth',
      name: en`Teeth of a new price`,
      means: en`From which to which number of teeth the new price holds.`,
      found: en`Price list.`,
      limits: () => TEETH_RANGE,
    },
    {
      place: 'reach.price.price',
      name: en`New price of one`,
      means: en`What one such wheel costs.`,
      found: en`Price list.`,
      limits: () => PRICE,
    },
    {
      place: 'shop.currency',
      name: en`Word for the money`,
      means: en`Stands behind every price.`,
      found: en`Your own word, such as EUR.`,
    },
  ],
};
