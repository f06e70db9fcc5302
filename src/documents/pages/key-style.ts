/** The answer key: front and back of one sheet, small but never smaller than 8 points. */
export const KEY_STYLE = `
.key{width:100%;border-collapse:collapse;margin-bottom:1rem;table-layout:fixed}
.key caption{text-align:left;padding:.2rem 0 .5rem;color:var(--soft)}
.key th,.key td{border-top:1px solid var(--rule);padding:.5rem .8rem .5rem 0;text-align:left;vertical-align:top}
.key thead th{border-top:2px solid var(--ink);font-size:.85rem;color:var(--soft);font-weight:600;padding:.3rem .8rem .3rem 0}
.key tr.group th{border-top:2px solid var(--ink);font-size:1.1rem;font-weight:700;padding:.35rem 0 .25rem}
.key tr.group span{font-weight:400;color:var(--soft);margin-left:.6rem}
.key tbody:last-of-type tr:last-child>*{border-bottom:2px solid var(--ink)}
.key tbody th{font-weight:400}
.key tbody th b{font-size:1.1rem;margin-right:.55rem}
.key small{display:block;color:var(--soft);font-size:.87rem;line-height:1.35}
.key .good b{font-size:1.2rem;line-height:1.2}
.key .good .state{font-size:1.05rem}
.key .both span{white-space:nowrap;display:block}
.key .c1{width:29%}.key .c2{width:20%}.key .c3{width:15%}.key .c4{width:24%}.key .c5{width:12%}
.notes{margin-top:.4rem;display:grid;gap:.3rem;font-size:.92rem;color:var(--soft)}
.why{margin-top:2rem;border-top:2px solid var(--ink);padding-top:.6rem}
.why section{margin-top:1rem}
.why dl{display:grid;grid-template-columns:auto 1fr;gap:.3rem 1rem}
.why dt{font-weight:700}
.why em{font-style:normal;color:var(--soft)}
.why .assumed{color:var(--soft);font-size:.9rem;margin-top:.3rem}
@media screen and (max-width:54rem){
.key,.key tbody,.key tr,.key td,.key tbody th,.key caption{display:block;width:auto}
.key thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.key tbody tr{border-top:1px solid var(--rule);padding:.5rem 0 .7rem}
.key tbody tr>*,.key tbody:last-of-type tr:last-child>*{border:0;padding:.15rem 0}
.key tbody tr.group{border-top:2px solid var(--ink);padding:.3rem 0}
.key tr.group th{border:0}
.key .both span{display:inline;margin-right:1rem}
.key td[data-label]::before{content:attr(data-label);display:block;font-size:.75rem;color:var(--soft)}
}
@page{margin:10mm 12mm}
@media print{
body{font-size:8.8pt;line-height:1.25}
h1{font-size:15pt}h2{font-size:11pt}
.block{margin-bottom:2mm}
.block>div{padding:1.2mm 2.5mm}
.block dl{padding:0}
.block dt,.block dd{padding:.3mm 2.5mm;font-size:8pt;line-height:1.3}
.key{margin-bottom:1.5mm}
.key caption{padding:0 0 .8mm}
.key td svg{width:37mm}
.key .c1{width:32%}.key .c2{width:21%}.key .c3{width:14%}.key .c4{width:21%}.key .c5{width:12%}
.key tr{break-inside:avoid}
.key tr.group{break-after:avoid}
.key th,.key td{padding:.35mm 2mm .2mm 0}
.key thead th{font-size:8pt;padding:.4mm 2mm .4mm 0}
.key tr.group th{font-size:9.5pt;padding:.6mm 0 .3mm}
.key .good b{font-size:11pt}
.key .good .state{font-size:9.2pt}
.key tbody th b{font-size:9.5pt}
.key small,.notes,.why .assumed{font-size:8pt;line-height:1.22}
.notes{gap:.4mm}
.why{break-before:page;margin:0;border:0;padding:0}
.why section{margin-top:1.8mm;break-inside:avoid}
.why dl{gap:.5mm 3mm}
.why dd{font-size:8.4pt;line-height:1.22}
}
`;
