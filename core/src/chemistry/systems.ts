import { en } from '../en.ts';
import type { Group } from './measures.ts';

/** The two tanks of a machine, as everywhere. */
export type Tank = 'A' | 'B';
export const TANKS = ['A', 'B'] as const satisfies readonly Tank[];

export const otherTank = (tank: Tank): Tank => (tank === 'A' ? 'B' : 'A');

/** Two kinds of components that react with each other, and how the trade counts them. */
export interface System {
  readonly words: string;
  /** The key under which the file says where the first component is; it is asked, never assumed. */
  readonly askedAs: 'resinIn' | 'isocyanateIn';
  /** The component that is asked for, and the one in the other tank. */
  readonly asked: Component;
  readonly other: Component;
  /** Whose equivalents the index counts, over those of the other component. */
  readonly counts: 'asked' | 'other';
  /** What the index is called, alone and with its figure. */
  readonly index: { readonly label: string; readonly what: string; readonly said: (figure: string) => string };
}

interface Component {
  readonly words: string;
  readonly group: Group;
}

/** The systems there are; an epoxy's index is its share of stoichiometry, hardener over resin. */
export const SYSTEMS = {
  epoxy: {
    words: en`epoxy`,
    askedAs: 'resinIn',
    asked: { words: en`resin`, group: 'epoxide' },
    other: { words: en`hardener`, group: 'hardener' },
    counts: 'other',
    index: {
      label: en`Hardener, % of stoichiometry`,
      what: en`per cent of stoichiometry`,
      said: (figure) => en`${figure} % of stoichiometry`,
    },
  },
  urethane: {
    words: en`urethane`,
    askedAs: 'isocyanateIn',
    asked: { words: en`isocyanate`, group: 'isocyanate' },
    other: { words: en`polyol`, group: 'active hydrogen' },
    counts: 'asked',
    index: { label: en`Isocyanate index`, what: en`index`, said: (figure) => en`index ${figure}` },
  },
} satisfies Readonly<Record<string, System>>;

export type SystemName = keyof typeof SYSTEMS;
export const SYSTEM_NAMES = ['epoxy', 'urethane'] as const satisfies readonly SystemName[];

export const systemOf = (name: SystemName): System => SYSTEMS[name];

/** What must react in a tank, given where the component that was asked for is. */
export const componentIn = (system: SystemName, askedIn: Tank, tank: Tank): Component =>
  systemOf(system)[tank === askedIn ? 'asked' : 'other'];

/** The tank whose equivalents the index counts: the isocyanate, or the hardener. */
export const countedTank = (system: SystemName, askedIn: Tank): Tank =>
  systemOf(system).counts === 'asked' ? askedIn : otherTank(askedIn);
