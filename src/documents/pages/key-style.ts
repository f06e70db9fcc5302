/** The answer key: all tables on one sheet where they fit, small but never smaller than 8 points. */
export const KEY_STYLE = `
.only{font-weight:700}
.key{width:100%;border-collapse:collapse;margin-bottom:1.6rem;table-layout:fixed}
.key caption{text-align:left;padding:.2rem 0 .35rem}
.key caption h2{display:inline}
.key caption span{color:var(--soft);margin-left:.8rem}
.key th,.key td{border-top:1px solid var(--rule);padding:.5rem .6rem .5rem 0;text-align:left;vertical-align:top}
.key thead th{border-top:2px solid var(--ink);border-bottom:1px solid var(--ink);font-size:.8rem;color:var(--soft);font-weight:600;padding:.25rem .6rem .25rem 0;vertical-align:bottom}
.key tbody tr:last-child>*{border-bottom:1px solid var(--ink)}
.key tbody th{font-weight:400}
.key tbody th b{font-size:1.15rem;margin-right:.5rem}
.key tbody th small,.key td small{display:block;color:var(--soft);font-size:.85rem;line-height:1.35}
.key .good b{font-size:1.3rem;white-space:nowrap;line-height:1.2}
.key .good .state{font-size:1.02rem;white-space:normal}
.key .both span{white-space:nowrap;display:block}
.key .why{font-size:.88rem;line-height:1.38}
.key .c1{width:15%}.key .c2{width:15%}.key .c3{width:12.5%}.key .c4{width:28%}.key .c5{width:29.5%}
.key tfoot td{border:0;font-size:.82rem;color:var(--soft);padding-top:.4rem}
.notes{border-top:2px solid var(--ink);padding-top:.6rem;display:grid;gap:.3rem;font-size:.92rem;color:var(--soft)}
@media (max-width:54rem){
.key,.key tbody,.key tr,.key td,.key tbody th,.key tfoot,.key caption{display:block;width:auto}
.key thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.key tbody tr{border-top:1px solid var(--ink);padding:.5rem 0 .7rem}
.key tbody tr>*,.key tbody tr:last-child>*{border:0;padding:.15rem 0}
.key .both span{display:inline;margin-right:1rem}
.key td[data-label]::before{content:attr(data-label);display:block;font-size:.75rem;color:var(--soft);letter-spacing:.04em}
}
@media print{
body{font-size:8.6pt;line-height:1.28}
h1{font-size:15pt}h2{font-size:10.5pt}
.block{margin-bottom:2.5mm}
.block>div{padding:1.4mm 2.5mm}
.block dt,.block dd{padding:.4mm 2.5mm;font-size:8pt;line-height:1.3}
.key{margin-bottom:2.6mm;break-inside:avoid}
.key th,.key td{padding:1mm 2mm 1mm 0}
.key thead th{font-size:7.5pt;padding:.4mm 2mm .4mm 0}
.key .good b{font-size:10.5pt}
.key .good .state{font-size:9pt}
.key tbody th b{font-size:10pt}
.key tbody th small,.key td small,.key .why,.key tfoot td{font-size:8pt;line-height:1.22}
.notes{font-size:8pt;gap:.6mm;padding-top:1.5mm}
}
`;
