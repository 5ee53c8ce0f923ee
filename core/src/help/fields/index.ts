import type { FieldPage } from '../fieldLine.ts';
import { chemistry } from './chemistry.ts';
import { densities } from './densities.ts';
import { drive } from './drive.ts';
import { machine } from './machine.ts';
import { material } from './material.ts';
import { options } from './options.ts';
import { pumps } from './pumps.ts';
import { rack } from './rack.ts';
import { ratioCheck } from './ratioCheck.ts';
import { reach } from './reach.ts';
import { running } from './running.ts';
import { window } from './window.ts';

/** Every box of the program, in the order of its pages. */
export const FIELD_PAGES: readonly FieldPage[] = [
  machine,
  drive,
  pumps,
  running,
  rack,
  material,
  densities,
  chemistry,
  options,
  reach,
  ratioCheck,
  window,
];
