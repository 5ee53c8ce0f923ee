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

export async function readLicences(): Promise<Licences> {
  const answer = await fetch('./licences.json');
  if (!answer.ok) throw new Error('The list of licences is not there: it is made when the program is built.');
  return (await answer.json()) as Licences;
}
