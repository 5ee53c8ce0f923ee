export function serve(folder: string, port: number): Promise<string>;
