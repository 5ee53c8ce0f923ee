export function textOf(number: number): string;
export function numberOf(text: string): number | null;
