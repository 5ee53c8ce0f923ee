/** Long enough for the slowest browser to have taken the file over. */
const DOWNLOAD_TAKES_ms = 60_000;

/** Gives a table for spreadsheets to the person as a file of its own. */
export function giveCsv(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), DOWNLOAD_TAKES_ms);
}
