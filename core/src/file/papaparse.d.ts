/** The part of papaparse that is used here. Its own types would bring Node's into core. */
declare module 'papaparse/papaparse.js' {
  interface ParseSettings {
    readonly delimiter: string;
    readonly skipEmptyLines: boolean;
  }
  interface ParseTrouble {
    readonly type: string;
    readonly message: string;
    readonly row?: number;
  }
  interface WriteSettings {
    readonly delimiter: string;
    readonly newline: string;
  }
  const papaparse: {
    parse(
      text: string,
      settings: ParseSettings,
    ): { readonly data: readonly (readonly string[])[]; readonly errors: readonly ParseTrouble[] };
    unparse(rows: readonly (readonly string[])[], settings: WriteSettings): string;
  };
  export default papaparse;
}
