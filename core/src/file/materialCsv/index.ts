export { LARGEST_CSV_BYTES } from '../csv.ts';
export { LIMIT_DEFINITIONS, type LimitDefinition, PLAIN_ORDER } from './columns.ts';
export { listedWords } from './preview.ts';
export { type ListedMaterial, type ListFault, type MaterialList, readMaterials } from './read.ts';
export { writeMaterials } from './write.ts';
