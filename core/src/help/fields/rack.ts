import { readPrice } from '../../price.ts';
import { readTeethRange } from '../../teethRange.ts';
import { expectedOf } from '../expected.ts';
import { type FieldPage, FROM_LIST } from '../fieldLine.ts';

const piece = (key: string): string => `racks.*.pieces.*.${key}`;
const price = (key: string): string => `racks.*.prices.*.${key}`;
const TEETH = () => expectedOf(readTeethRange('1 to 400'));
const PRICE = () => expectedOf(readPrice('-1'));

/** The rack on the Machine page, and what its wheels cost. */
export const rack: FieldPage = {
  title: 'Rack and prices',
  lines: [
    {
      place: 'racks.*.pieces',
      name: 'Rack in one line',
      means: 'The whole stock in one line: size, then teeth, ranges and counts.',
      found: 'A walk along the rack: 08B: 15-20, 22-25, 30x2. What is on the machines is not counted.',
      limits: () => 'Enter sets the rack; nothing happens before.',
    },
    {
      place: 'racks.*.newBore',
      name: 'Bore of new rows',
      means: 'The bore that new pieces of the one line get.',
      found: 'Caliper, or the part number.',
      limitsOf: piece('bore'),
    },
    { place: 'racks.*.name', name: 'Name of the rack', means: 'What the rack is called in lists.', found: 'Your own words.' },
    { place: 'racks.*.note', name: 'Note of the rack', means: 'Anything worth knowing of the rack.', found: 'Your own words.' },
    { place: piece('kind'), name: 'Kind', means: 'The kind of drive that the piece is for.', found: 'Look at the piece.' },
    {
      place: piece('size'),
      limits: FROM_LIST,
      name: 'Size',
      means: 'The chain number that the piece is for.',
      found: 'Stamped on its hub.',
    },
    { place: piece('teeth'), name: 'Teeth', means: 'Teeth of the piece.', found: 'Stamped on the hub, or counted.' },
    {
      place: piece('bore'),
      name: 'Bore',
      means: 'Bore of the piece; an empty one fits any shaft, with a note.',
      found: 'Caliper, or the part number.',
    },
    { place: piece('keyway'), name: 'Keyway', means: 'Width of its keyway; it is printed, not checked.', found: 'Caliper.' },
    {
      place: piece('quantity'),
      name: 'Quantity',
      means: 'Pieces on the rack, without those on the machines; 0 for one that is lent out.',
      found: 'Count them.',
    },
    { place: piece('part'), name: 'Part number', means: 'Printed on the change sheet; kept as text.', found: 'Label or catalogue.' },
    { place: piece('place'), name: 'Place', means: 'Where it hangs; printed on the change sheet.', found: 'The mark on the rack.' },
    { place: price('kind'), name: 'Kind with a price', means: 'The kind of drive that the price is for.', found: 'Price list.' },
    {
      place: price('size'),
      limits: FROM_LIST,
      name: 'Size with a price',
      means: 'The chain number that the price is for.',
      found: 'Price list.',
    },
    {
      place: price('from'),
      also: [price('to')],
      name: 'Teeth with a price',
      means: 'From which to which number of teeth the price holds.',
      found: 'Price list.',
    },
    { place: price('price'), name: 'Price of one', means: 'What one such wheel costs.', found: 'Price list.', limits: PRICE },
    {
      place: 'reach.price.size',
      name: 'Size of a new price',
      means: 'The chain number that the new price is for.',
      found: 'The list holds the sizes of this machine.',
    },
    {
      place: 'reach.price.teeth',
      name: 'Teeth of a new price',
      means: 'From which to which number of teeth the new price holds.',
      found: 'Price list.',
      limits: TEETH,
    },
    { place: 'reach.price.price', name: 'New price of one', means: 'What one such wheel costs.', found: 'Price list.', limits: PRICE },
    {
      place: 'shop.currency',
      name: 'Word for the money',
      means: 'Stands behind every price.',
      found: 'Your own word, such as EUR.',
    },
  ],
};
