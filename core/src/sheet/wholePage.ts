import { language } from '../en.ts';
import { escaped } from './html.ts';
import { type Paper, pageStyle } from './pageStyle.ts';

const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

/** What stands on the page, and the type size that makes it fit; whoever shows it sets that size on the element around it. */
export interface SheetBody {
  readonly html: string;
  readonly size_pt: number;
}

/** A page to print as complete HTML that needs nothing else, black on white. */
export function wholePage(title: string, { html, size_pt }: SheetBody, paper: Paper): string {
  return `<!doctype html>
<html lang="${escaped(language())}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width"><title>${escaped(title)}</title><style>${pageStyle(paper)}</style></head>
<body><main class="sheet" style="font-size:${size_pt}pt">
${html}
</main></body></html>
`;
}
