/** The talk on the wall: one question as high as the window, read from the back of a room. */
export const TALK_WALL_STYLE = `
body{max-width:none;padding:0}
h1{font-size:1rem;font-weight:400;color:var(--soft);padding:1rem clamp(1rem,4.5vw,4.5rem) 0}
.wall{min-height:100vh;padding:clamp(1rem,3.5vw,3rem) clamp(1rem,4.5vw,4.5rem);border-bottom:2px solid var(--ink);display:grid;align-content:start;gap:1.1rem;font-size:clamp(1.1rem,1.65vw,1.9rem);line-height:1.35}
.wall h2{font-size:clamp(2rem,4.6vw,5rem);line-height:1.08;letter-spacing:-.01em}
.wall .count{color:var(--soft);font-size:.8em}
.wall .task{font-size:1.15em;border-left:.35rem solid var(--brass);padding-left:.8rem}
.wall figure svg{width:100%;max-height:74vh}
.cover label{cursor:pointer;font-weight:700;display:inline-block;border:2px solid var(--ink);padding:.4rem 1rem}
.cover input{width:1.6rem;height:1.6rem;margin-right:.7rem;vertical-align:middle;accent-color:var(--brass)}
.cover>div{display:none;gap:.9rem;margin-top:1.1rem}
.cover input:checked~div{display:grid}
@page{size:landscape}
@media print{
.wall{min-height:0;padding:0;border:0;break-after:page;font-size:13pt;gap:3mm}
.wall h2{font-size:30pt}
.wall figure svg{max-height:96mm}
.cover input,.cover label{display:none}
.cover>div{display:grid;margin:0}
}
`;

/** What whoever leads the talk holds in hand. */
export const TALK_NOTES_STYLE = `
.how{display:grid;gap:.4rem;margin-bottom:1.2rem;max-width:62em}
.note{border-top:2px solid var(--ink);padding-top:.7rem;margin-bottom:1.8rem;display:grid;gap:.7rem}
.note .count{color:var(--soft)}
.note dl{display:grid;grid-template-columns:minmax(6.5rem,max-content) minmax(0,1fr);gap:.35rem 1.2rem}
.note dt{font-weight:700}
.note dd p+p{margin-top:.25rem}
.note dd.ask{font-size:1.15rem;font-weight:700}
.note .pictures{display:grid;gap:1rem}
.out li{margin-left:1.2rem}
@media screen and (max-width:34rem){.note dl{grid-template-columns:minmax(0,1fr)}.note dd{margin-bottom:.5rem}}
@media print{.note{break-inside:avoid-page;margin-bottom:5mm}.note figure svg{max-width:135mm}}
`;

/** Parts of both pages. */
export const TALK_PART_STYLE = `
figure{--paper:var(--sheet);background:var(--sheet);border:1px solid var(--rule);padding:.6rem .8rem}
figcaption{color:var(--soft);font-size:.9em;margin-bottom:.35rem}
.wide{overflow-x:auto}
table.talk{border-collapse:collapse;width:100%}
table.talk th,table.talk td{border-bottom:1px solid var(--rule);padding:.35em .7em .35em 0;text-align:left;vertical-align:top}
table.talk thead th{border-bottom:2px solid var(--ink);font-size:.85em;color:var(--soft)}
@media print{figure{border:0;padding:0;break-inside:avoid}}
`;
