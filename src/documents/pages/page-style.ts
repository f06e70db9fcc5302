/**
 * The look of every page: warm paper, blue-black ink, one brass accent; prints in grey on A4 and
 * Letter, reads from a phone to a laptop, turns with a dark screen. Nothing is fetched.
 */
export const PAGE_STYLE = `
:root{color-scheme:light dark;--paper:#faf6ec;--ink:#1d2a3f;--soft:#5a6474;--rule:#b9b29f;--brass:#8a6414;--sheet:#fffdf6}
@media (prefers-color-scheme:dark){:root{--paper:#171c24;--ink:#e4e0d4;--soft:#a9adb3;--rule:#4a5160;--brass:#d9b25a;--sheet:#1c222c}}
*{box-sizing:border-box}
html{background:var(--paper);color:var(--ink);-webkit-text-size-adjust:100%}
body{margin:0 auto;max-width:70rem;padding:1.25rem clamp(.9rem,3vw,2.5rem) 3rem;font:1.0625rem/1.45 'Atkinson Hyperlegible','Segoe UI',system-ui,-apple-system,Roboto,'Helvetica Neue',Arial,sans-serif;font-variant-numeric:tabular-nums;hyphens:manual;overflow-wrap:break-word}
h1,h2,h3,p,ol,ul,dl,dd,figure{margin:0;padding:0}
h1{font-size:clamp(1.6rem,4.6vw,2.3rem);line-height:1.12;font-weight:700;letter-spacing:-.01em}
h2{font-size:1.3rem;line-height:1.2}
h3,h2.small{font-size:.82rem;text-transform:uppercase;letter-spacing:.09em;color:var(--soft);font-weight:600;margin-bottom:.35rem}
svg{display:block;max-width:100%;height:auto}
.num{white-space:nowrap}
/* Title block, as at the foot of a drawing. */
.block{display:grid;grid-template-columns:1fr auto;border:2px solid var(--ink);margin-bottom:1rem}
.block>div{padding:.75rem 1rem}
.block .mark{border-right:1px solid var(--ink);min-width:0}
.block .mark p{color:var(--soft);margin-top:.3rem;max-width:38em}
.block dl{display:grid;grid-template-columns:auto auto;align-content:stretch;min-width:15rem}
.block dt,.block dd{padding:.3rem .75rem;border-bottom:1px solid var(--rule)}
.block dt{color:var(--soft);font-size:.82rem;padding-right:0;line-height:1.75}
.block dt:last-of-type,.block dd:last-of-type{border-bottom:0}
@media screen and (max-width:44rem){.block{grid-template-columns:1fr}.block .mark{border-right:0;border-bottom:1px solid var(--ink)}.block dl{min-width:0;grid-template-columns:auto 1fr}}
`;

/** Shared by the print forms: A4 or Letter, grey, nothing cut across two pages. */
export const PRINT_STYLE = `
@page{margin:12mm}
@media print{
:root{--paper:#fff;--ink:#000;--soft:#333;--rule:#888;--brass:#000;--sheet:#fff}
html{background:#fff;color:#000}
body{max-width:none;padding:0;font-size:10.5pt;line-height:1.35}
h1{font-size:19pt}h2{font-size:13pt}h3,h2.small{font-size:8pt;color:#333}
h2,h3{break-after:avoid}
.block>div{padding:1.6mm 3mm}
.block dl{padding:0}.block dt,.block dd{padding:.5mm 3mm;font-size:9pt;line-height:1.3}
}
`;

/** One table's page: large type, one task after the other, room to write with a blunt pencil. */
export const TABLE_STYLE = `
.care{display:grid;grid-template-columns:auto 1fr;gap:.2rem .8rem;border-top:1px solid var(--ink);border-bottom:1px solid var(--ink);padding:.6rem .2rem;margin-bottom:1.4rem}
.care svg{width:2.1rem;height:2.1rem;margin-top:.1rem}
.care ul{list-style:none;display:grid;gap:.15rem}
.setup{border-top:2px solid var(--ink);padding-top:.7rem;margin-bottom:1.8rem}
.setup header{display:flex;flex-wrap:wrap;align-items:baseline;gap:.2rem 1.2rem;margin-bottom:.7rem}
.setup header p{color:var(--soft)}
.setup .work{display:grid;grid-template-columns:minmax(0,30rem) minmax(15rem,1fr);gap:1rem 2rem;align-items:start}
.setup figure{background:var(--sheet);--paper:var(--sheet);border:1px solid var(--rule);padding:.6rem}
.setup figure svg{margin:0 auto}
.setup figure svg+h3{margin-top:1rem}
figcaption{color:var(--soft);font-size:.82rem;margin-top:.35rem}
.steps{list-style:none;counter-reset:step}
.steps li{counter-increment:step;position:relative;padding:.28rem 0 .28rem 2.5rem;font-size:1.12rem;min-height:2.1rem}
.steps li::before{content:counter(step);position:absolute;left:0;top:.22rem;width:1.75rem;height:1.75rem;border:1.5px solid var(--ink);border-radius:50%;text-align:center;line-height:1.6rem;font-weight:700;font-size:1rem}
.read{border-left:4px solid var(--brass);padding:.25rem 0 .25rem .9rem;margin-top:.8rem;display:grid;gap:.2rem}
.strip{margin-top:.9rem}
.strip>div>svg{width:min(100%,44rem)}
.strip p{color:var(--soft);font-size:.92rem;margin-bottom:.2rem}
.chart{border-top:2px solid var(--ink);padding-top:.7rem}
.chart .wide{overflow-x:auto}
table.data{border-collapse:collapse;width:100%;min-width:38rem}
table.data caption{text-align:left;padding-bottom:.5rem;color:var(--soft)}
table.data th,table.data td{border:1px solid var(--ink);padding:.35rem .6rem;text-align:left;vertical-align:middle}
table.data thead th{font-size:.88rem;font-weight:600;border-bottom-width:2px}
table.data tbody tr{height:3.4rem}
table.data tbody th{font-size:1.15rem;white-space:nowrap}
table.data td.unit{width:4.5rem;color:var(--soft)}
.local{margin-top:1rem;color:var(--soft);font-size:.9rem}
@media screen and (max-width:56rem){.setup .work{grid-template-columns:minmax(0,1fr)}}
@media screen and (max-width:44rem){
table.data{min-width:0}
table.data th,table.data td{padding:.3rem .2rem}
table.data thead th{font-size:.72rem;overflow-wrap:normal}
table.data tbody th{font-size:1.05rem}
table.data td.unit{width:auto;font-size:.85rem}
.strip>div{overflow-x:auto}
.strip>div>svg{width:34rem;max-width:none}
}
@media print{
.setup{break-inside:avoid;margin-bottom:2.5mm;padding-top:1.2mm}
.setup header{margin-bottom:1mm}
.setup .work{grid-template-columns:112mm minmax(0,1fr);gap:5mm}
.setup figure{border:0;padding:0}
.setup figure svg{margin:0}
.steps li{font-size:10.5pt;padding:.35mm 0 .35mm 7.5mm;min-height:5.9mm}
.read{margin-top:2mm;padding:.4mm 0 .4mm 2.5mm;gap:.4mm;font-size:9.5pt;line-height:1.25}
.steps li::before{width:5.6mm;height:5.6mm;line-height:5.1mm;font-size:9.5pt;top:.5mm}
.care{margin-bottom:3mm;padding:.8mm 0;gap:0 3mm}
.block{margin-bottom:2.5mm}
.care svg{width:8mm;height:8mm}
.chart{break-inside:avoid;padding-top:1.2mm}
.strip{margin-top:1.5mm}
table.data{min-width:0}
table.data tbody tr{height:10mm}
table.data th,table.data td{padding:.6mm 2mm}
.local{margin-top:1mm;font-size:8pt;line-height:1.2;break-before:avoid}
}
`;
