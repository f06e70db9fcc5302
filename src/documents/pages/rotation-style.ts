/** The page of the rotation: charts as wide as the window, scrolled sideways where that is too narrow to read. */
export const ROTATION_STYLE = `
body{max-width:86rem}
.class{border-top:2px solid var(--ink);padding-top:.8rem;margin-bottom:2rem}
.said{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,24rem),1fr));gap:.7rem 2.5rem;margin:.8rem 0}
.said ul{list-style:none;display:grid;gap:.25rem}
.said li{padding-left:1rem;text-indent:-1rem}
.said li::before{content:"– "}
.said .sure p:first-child{font-size:1.3rem;font-weight:700;line-height:1.25}
.said .clash{border:2px solid var(--ink);padding:.6rem .9rem;grid-column:1/-1}
.said .clash h3{color:var(--ink);font-size:1.05rem;text-transform:none;letter-spacing:0}
.chart{background:var(--sheet);--paper:var(--sheet);border:1px solid var(--rule);padding:.7rem;margin:1rem 0}
.chart figcaption{font-weight:700;margin-bottom:.5rem}
.wide{overflow-x:auto}
.chart svg{width:100%;min-width:52rem;max-width:none}
table.routes{border-collapse:collapse;width:100%}
table.routes caption{text-align:left;font-weight:700;padding-bottom:.4rem}
table.routes th,table.routes td{border:1px solid var(--rule);padding:.3rem .55rem;text-align:left;white-space:nowrap}
table.routes thead th{border-bottom:2px solid var(--ink);font-size:.88rem;font-weight:600}
table.routes tbody th{font-size:1.15rem}
.between{font-weight:700}
@page{size:landscape;margin:10mm 12mm}
@media print{
.class{border:0;padding:0;margin:0}
.class+.class{break-before:page}
.said{margin:1.5mm 0;gap:1mm 8mm;font-size:9pt;line-height:1.25;grid-template-columns:1fr 1fr}
.said .sure p:first-child{font-size:11pt}
.chart{border:0;padding:0;margin:2mm 0;break-inside:avoid}
.chart figcaption{margin-bottom:1mm;font-size:10pt}
.chart svg{min-width:0;max-height:126mm}
.wide{overflow:visible}
table.routes{break-inside:avoid;font-size:8.5pt}
table.routes th,table.routes td{padding:.5mm 1.5mm}
}
`;
