import { type BrowserWindow, dialog } from 'electron';
import { en } from '../../core/src/en.ts';
import type { Paper } from './contract.ts';
import { writeWhole } from './disk.ts';
import { placeChosen, suggestedName } from './names.ts';

const PDF = '.pdf';
const MM_PER_INCH = 25.4;

/** Electron wants inches here, and its own A4 is 8.27 by 11.7 of them: 0.1 mm off, which the print-scale bar would show. */
const SIZES_in: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: 210 / MM_PER_INCH, height: 297 / MM_PER_INCH },
  Letter: { width: 8.5, height: 11 },
};

/** Shows the system's print dialog with the printer's own paper; done when it is closed. */
export function print(window: BrowserWindow): Promise<void> {
  return new Promise((resolve, reject) => {
    window.webContents.print({ printBackground: true, usePrinterDefaultPageSize: true }, (printed, reason) => {
      if (printed || reason === 'Print job canceled') resolve();
      else reject(new Error(en`The page was not printed: ${reason}.`));
    });
  });
}

/** The page's own style sheet sets paper and margins; the size here is for a page that sets none, where Electron would take Letter. */
export async function savePdf(window: BrowserWindow, name: string, paper: Paper): Promise<boolean> {
  const pdf = await window.webContents.printToPDF({
    pageSize: SIZES_in[paper],
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
  });
  const answer = await dialog.showSaveDialog(window, {
    title: en`Save the page as PDF`,
    defaultPath: suggestedName(name, PDF),
    filters: [{ name: 'PDF', extensions: [PDF.slice(1)] }],
  });
  if (answer.canceled || answer.filePath === '') return false;
  await writeWhole(await placeChosen(answer.filePath, PDF), pdf);
  return true;
}
