import { en } from '../../../../core/src/en.ts';
/** A package of which something goes along with the program. */
export interface PackageLicence {
  readonly name: string;
  readonly version: string;
  /** The short name of its licence, as the package says it. */
  readonly licence: string;
  readonly text: string;
}

/** Written by the build, from what it put into the bundles. */
export interface Licences {
  readonly version: string;
  readonly text: string;
  readonly electron: string;
  readonly packages: readonly PackageLicence[];
}

/** As it is written: each text once, and its number with the packages that carry it. */
export interface Written extends Omit<Licences, 'packages'> {
  readonly texts: readonly string[];
  readonly packages: readonly (Omit<PackageLicence, 'text'> & { readonly text: number })[];
}

export const withTexts = ({ texts, packages, ...rest }: Written): Licences => ({
  ...rest,
  packages: packages.map((one) => ({ ...one, text: texts[one.text] ?? '' })),
});

export async function readLicences(): Promise<Licences> {
  const answer = await fetch('./licences.json');
  if (!answer.ok) throw new Error(en`The list of licences is not there: it is made when the program is built.`);
  return withTexts((await answer.json()) as Written);
}
