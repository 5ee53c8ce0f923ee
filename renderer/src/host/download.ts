/** Long enough for the slowest browser to have taken the file over. */
const DOWNLOAD_TAKES_ms = 60_000;

/** Hands a text or a file over as a file; the browser or the shell asks where it goes. */
export function download(name: string, content: string | Blob, type: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), DOWNLOAD_TAKES_ms);
}
