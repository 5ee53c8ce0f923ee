/** Papers a sheet is printed on; what is printed fits both. */
export type Paper = 'A4' | 'Letter';

/** Size in CSS, and the width a page shows on screen. */
const PAPERS: Readonly<Record<Paper, { readonly size: string; readonly width: string; readonly height: string }>> = {
  A4: { size: 'A4', width: '210mm', height: '297mm' },
  Letter: { size: 'letter', width: '8.5in', height: '11in' },
};

/** Width and height that both papers have between margins of 12 mm; a millimetre of the height is left, so that rounding never makes a second page. */
export const SHEET_WIDTH_mm = 186;
export const SHEET_HEIGHT_mm = 254;

/** Widths of the columns of materials on a quote page: they fill its width. */
export const OFFER_COLUMNS_mm: readonly number[] = [28, 17, 25, 27, 20, 33, 16, 20];
const OFFERS = OFFER_COLUMNS_mm.map((wide, index) => `.quote .offers th:nth-child(${index + 1}){width:${wide}mm}`).join('');

/**
 * The style of a printed sheet. Every height but those of drawing, bar and the lines to write on is in em, so that one type size sets them all.
 *
 * @source our choice; black on white, figures of one width
 */
export function pageStyle(paper: Paper): string {
  const { size, width, height } = PAPERS[paper];
  return `
@page{size:${size};margin:12mm}
*{box-sizing:border-box;margin:0;padding:0}
html{color-scheme:light;background:#fff;color:#000}
body{font-family:"Helvetica Neue",Arial,"Liberation Sans",sans-serif;font-variant-numeric:tabular-nums lining-nums;-webkit-print-color-adjust:exact;print-color-adjust:exact}
.sheet{width:${SHEET_WIDTH_mm}mm;margin:0 auto;line-height:1.3;overflow-wrap:anywhere}
.page{gap:1.2mm;min-height:${SHEET_HEIGHT_mm}mm;display:flex;flex-direction:column;justify-content:space-between}
h1,h2,b{font-weight:600}
h1{font-size:1.75em;line-height:1.2}
.title{display:flex;flex-wrap:wrap;align-items:baseline;gap:0 1em}
h2{font-size:1em;border-bottom:.35mm solid #000;padding-bottom:.1em}
h2 span{font-weight:400;font-size:.9em}
table{border-collapse:collapse;width:100%}
th{text-align:left;font-weight:400;font-size:.85em}
td,th{padding:.16em .6em .16em 0;border-bottom:.15mm solid #777;vertical-align:baseline}
ul,ol{list-style:none}
.one,.two{display:-webkit-box;-webkit-box-orient:vertical;overflow:hidden;-webkit-line-clamp:1}
.two{-webkit-line-clamp:2}
.top{display:grid;grid-template-columns:1fr 1fr;gap:0 6mm}
.top .right{text-align:right}
.top .big{font-size:1.3em;line-height:1.2;font-weight:600}
.stop{border:1.2mm solid #000;padding:.3em .8em}
.stop b{font-size:1.5em;line-height:1.2}
.care{border:.5mm solid #000;padding:.4em .8em;display:grid;grid-template-columns:1fr 1fr;gap:0 5mm;font-size:.9em}
.care li{padding-left:.9em;text-indent:-.9em}
.care li::before,.warn li::before,.stop li::before{content:"• "}
.care .wide{grid-column:1/3}
.care p{margin-top:.25em}
.changes{table-layout:fixed}
.changes td,.changes th{vertical-align:top;padding:.2em .5em .2em 0}
.changes th{width:30mm;font-size:.9em}
.changes small{display:block;font-size:.85em}
.changes td{font-size:.9em}
.changes .figures{font-size:1.25em;line-height:1.35}
.changes .figures b{font-size:1.4em;line-height:1}
.stays,.note{font-size:.9em;margin-top:.2em}
.cols{display:grid;grid-template-columns:84mm 98mm;gap:0 4mm;align-items:start}
.cols svg{display:block;margin-top:1mm}
.cols svg+h2{margin-top:.4em}
.wear{font-size:.85em;table-layout:fixed}
.wear th:nth-child(1){width:26mm}
.wear th:nth-child(3){width:31mm}
.ratio div{display:grid;grid-template-columns:10.4em 1fr;border-bottom:.15mm solid #777;padding:.15em 0}
.ratio .against{grid-column:1/3;font-size:.9em}
.ratio div:first-child b{font-size:1.1em;line-height:1.1}
.warn{margin-top:.7em}
.warn ul{font-size:.82em;line-height:1.25}
.running div{display:grid;grid-template-columns:18mm 44mm 1fr;gap:0 2mm;border-bottom:.15mm solid #777;padding:.12em 0}
.steps{display:grid;grid-template-columns:1fr 1fr;gap:0 6mm;font-size:.95em}
.steps li{position:relative;padding:.14em 0 .14em 2em}
.steps .box{position:absolute;left:0;top:.2em}
.box{display:inline-block;width:1.25em;height:1.25em;border:.3mm solid #000;vertical-align:-.25em}
.catch .blank td{height:8.2mm;padding-top:0;padding-bottom:0;vertical-align:middle;border-bottom-color:#000}
.catch td+td,.catch th+th{border-left:.15mm solid #777;padding-left:2mm}
.catch .box{margin-left:.4em;margin-right:.3em}
.rule{font-size:.95em;margin-top:.2em}
.sign{display:grid;grid-template-columns:repeat(3,1fr);gap:6mm;font-size:.85em}
.sign div{border-top:.2mm solid #000;margin-top:7.5mm;padding-top:.2em}
.foot{display:grid;grid-template-columns:102mm 1fr;gap:4mm;align-items:end;font-size:.85em}
.foot svg{display:block}
.foot .right{text-align:right}
ul+.note,table+.note{margin-top:.2em}
.offers{table-layout:fixed;font-size:.9em}
${OFFERS}
.listed{font-size:.9em}
.listed li{padding-left:.9em;text-indent:-.9em}
.listed li::before{content:"• "}
.halves{display:grid;grid-template-columns:1fr 1fr;gap:0 6mm}
.stop li{padding-left:.9em;text-indent:-.9em}
.own{border-left:.5mm solid #000;padding-left:2mm}
.reachrows{margin-top:1mm}
.reachrows div{display:grid;grid-template-columns:46mm 50mm 1fr;gap:0 2mm;border-bottom:.15mm solid #777;padding:.12em 0}
.quote svg{display:block;overflow:visible}
.quote text{paint-order:stroke;stroke:#fff;stroke-width:.8}
.verdict{display:grid;grid-template-columns:auto 1fr;gap:0 5mm;align-items:center}
.verdict b:first-child{font-size:2.6em;line-height:1.1}
.verdict div b{font-size:1em}
.verdict small{display:block;font-size:.85em}
.record .care{font-size:.82em;display:block}
.record .reachrows div{grid-template-columns:34mm 44mm 1fr}
.record .offers th:first-child{width:10mm}
.record .offers th:last-child{width:30mm}
.record .dense{line-height:1.15}
.dense td,.dense th{padding-top:.02em;padding-bottom:.02em}
.trends{display:flex;gap:3mm}
.trends svg{display:block;flex:none}
.work{break-before:page;font-size:7.5pt}
.workcols{columns:2;column-gap:6mm}
.workcols li{break-inside:avoid;border-bottom:.15mm solid #777;padding:.3em 0}
.workcols h2{break-after:avoid;margin-top:.6em}
@media screen{html{background:#ddd}body{padding:8mm 0}.sheet{box-sizing:content-box;background:#fff;padding:12mm calc((${width} - ${SHEET_WIDTH_mm}mm)/2);min-height:calc(${height} - 24mm);outline:1px solid #777}.work{border-top:2px dashed #777;margin-top:12mm;padding-top:12mm}}
`;
}
