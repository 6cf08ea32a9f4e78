import { OPEN_SANS } from './font/open-sans.ts'
import type { Paper } from './request.ts'

/** Page sizes, mm: ISO 216, and 8 1/2 by 11 in. */
export const PAPER_SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
}

const face = (weight: 400 | 600): string =>
  `@font-face{font-family:"Sheet";font-weight:${weight};src:url(data:font/woff2;base64,${OPEN_SANS[weight]}) format("woff2")}`

const page = (paper: Paper): string =>
  `.sheet.${paper}{width:${PAPER_SIZES[paper].width}mm;height:${PAPER_SIZES[paper].height}mm}`

/** The look of both sheets, the same in the window, in a file and on paper. Always light: it is ink on white. */
const LOOK = `
.sheet{--sheet:#fff;--ground:#fff;--ink:#14191c;--ink2:#465056;--ink3:#5b666c;--rule:#bfc6c5;--hair:#dde1df;--coil:#1b5897;--coil-t:#dce7f3;--stop:#8a4b00;--stop-t:#f6e4c8;--gas:#5b666c;--gas-t:#e6e9e8;--alarm:#ae0c37;--metal:#e3e7e6;--metal2:#cdd3d2;--coil-z:#f0f5fa;--stop-z:#fcf5e9;color-scheme:light;
box-sizing:border-box;overflow:hidden;display:flex;flex-direction:column;padding:10mm 14mm 8mm;background:#fff;color:var(--ink);font:12.5px/1.38 "Sheet","Segoe UI","Noto Sans",Arial,sans-serif;font-variant-numeric:tabular-nums lining-nums;-webkit-print-color-adjust:exact;print-color-adjust:exact;break-after:page;break-inside:avoid}
.sheet:last-child{break-after:auto}
.sheet *{box-sizing:border-box}
.sheet h1,.sheet h2,.sheet p,.sheet ul,.sheet ol{margin:0;padding:0}
.sheet header{display:grid;grid-template-columns:1fr auto;gap:24px;align-items:end;border-bottom:2px solid var(--ink);padding:0 0 7px;background:none;height:auto;flex:none}
.sheet h1{font-size:23px;font-weight:600;line-height:1.2;letter-spacing:-.01em;display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden;overflow-wrap:anywhere}
.sheet header p{color:var(--ink2);text-align:right;white-space:nowrap;min-width:110px}
.sheet header p span{display:block}
.sheet .lead{margin:9px 0;font-size:14.5px;line-height:1.4}
.sheet h2{font-size:13.5px;font-weight:600;line-height:1.35}
.sheet h2 span{font-weight:400;color:var(--ink2);font-size:12.5px}
.sheet .pair h2{white-space:nowrap;overflow:hidden;text-overflow:ellipsis}
.sheet>*{flex:none}
.sheet>.pair{flex:1 1 262px;min-height:170px;max-height:300px;display:grid;grid-template-rows:minmax(0,1fr);grid-template-columns:1fr 1fr;border-top:1px solid var(--ink);border-bottom:1px solid var(--ink)}
.sheet .pair>div{padding:6px 16px 4px 0;min-width:0;min-height:0;display:flex;flex-direction:column}
.sheet .pair>div+div{border-left:1px solid var(--rule);padding:6px 0 4px 16px}
.sheet .corner{display:block;width:100%;flex:1 1 0;min-height:0}
.sheet .corner text{fill:var(--ink);font-size:12px}
.sheet .corner .length{font-size:16px}
.sheet .corner .what{fill:var(--ink2)}
.sheet table{width:100%;border-collapse:collapse}
.sheet th{font-weight:400;text-align:right;color:var(--ink2)}
.sheet table th:first-child,.sheet table td:first-child{text-align:left}
.sheet .numbers{margin-top:3px}
.sheet .numbers th{padding:3px 0 2px}
.sheet .numbers td{border-top:1px solid var(--rule);padding:4px 0;text-align:right;white-space:nowrap;font-size:21px;line-height:1.3;width:128px}
.sheet .numbers td:nth-child(2){color:var(--ink2)}
.sheet .numbers td:nth-child(3){font-weight:600}
.sheet table.numbers td:first-child{width:auto;font-size:14px;white-space:normal;padding-right:16px}
.sheet .numbers td:first-child span,.sheet .work td:first-child span,.sheet .work th span{display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden;overflow-wrap:anywhere}
.sheet .numbers td:first-child span{-webkit-line-clamp:3}
.sheet .two{display:grid;grid-template-columns:1fr 1fr;gap:28px;border-top:1px solid var(--ink);padding:6px 0 7px}
.sheet .two>*{min-width:0}
.sheet ul,.sheet ol{list-style:none}
.sheet li{padding:1px 0;overflow-wrap:anywhere}
.sheet .two li>span{display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden}
.sheet ol{counter-reset:step}
.sheet ol li{counter-increment:step;display:grid;grid-template-columns:20px 1fr}
.sheet ol li::before{content:counter(step);color:var(--ink2)}
.sheet .care{border:1.5px solid var(--ink);padding:7px 12px 8px;margin-top:2px}
.sheet .care li{display:grid;grid-template-columns:22px 1fr;gap:6px;padding:2px 0}
.sheet .care li>span{display:-webkit-box;-webkit-box-orient:vertical;-webkit-line-clamp:2;overflow:hidden}
.sheet .mark{width:17px;height:17px;display:block}
.sheet footer{margin-top:auto;display:grid;grid-template-columns:1fr 1fr 1fr;gap:0 24px;color:var(--ink2);font-size:11px;padding-top:10px}
.sheet footer div{border-top:1px solid var(--ink);padding-top:2px;margin-top:16px}
.sheet footer p{grid-column:1/-1;margin-top:4px;display:flex;justify-content:space-between}
.sheet.shop{font-size:10.8px;line-height:1.34;padding:9mm 12mm 7mm}
.sheet.shop h1{font-size:19px}
.sheet.shop h2{font-size:12px}
.sheet .rules{display:grid;grid-template-columns:22px 1fr;gap:4px;align-items:center;margin:6px 0;font-weight:600}
.sheet .work{border-top:1px solid var(--ink);border-bottom:1px solid var(--ink);table-layout:fixed}
.sheet .work th,.sheet .work td{padding:2.5px 7px 2.5px 0;text-align:right;white-space:nowrap;height:20px;overflow:hidden;text-overflow:ellipsis}
.sheet .work th:first-child{width:23%}
.sheet .work th:last-child{width:7%}
.sheet .work td{border-top:1px solid var(--rule)}
.sheet .work .changed td:nth-child(1),.sheet .work .changed td:nth-child(3){font-weight:600}
.sheet .work td:nth-child(2){color:var(--ink2)}
.sheet .work .blank{border-left:1px solid var(--rule)}
.sheet.shop.a4{font-size:11.2px}
.sheet.shop.a4 .work td{height:23px}
.sheet.shop>.two{flex:0 1 auto;min-height:0;overflow:hidden}
.sheet .key{margin:4px 0 6px;color:var(--ink2)}
.sheet.shop .two{grid-template-columns:1.12fr 1fr;gap:22px}
.sheet.shop .two section+section{margin-top:6px}
.sheet.shop .two li>span{-webkit-line-clamp:3}
.sheet.shop .columns{columns:2;column-gap:22px}
.sheet.shop .care li{display:block;break-inside:avoid}
.sheet.shop .care li>span{-webkit-line-clamp:3}
.sheet.shop .care i{font-style:normal;color:var(--ink2)}
`

/** Style of the sheets for one paper. */
export const sheetStyle = (paper: Paper): string =>
  `${face(400)}${face(600)}${page('a4')}${page('letter')}${LOOK}@page{size:${PAPER_SIZES[paper].width}mm ${PAPER_SIZES[paper].height}mm;margin:0}`
