import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { prepare } from '../../src/core/prepare.ts';
import type { Sheet } from '../../src/documents/pages/sheet.ts';
import { sheetOf } from '../../src/documents/prepare.ts';

const KIT = `handspike: kit 1
serial: BB-T1
name: Boathouse bench
parts:
  oak: {part: bar, length: 60.0 cm, mass: 118 g, first hole: 5.0 cm, hole spacing: 5.0 cm, holes: 11}
  amber: {part: spring scale, range: 5 N, graduation: 0.1 N, mass: 72 g}
  teal: {part: spring scale, range: 500 gf, graduation: 10 gf, mass: 60 g}
  brass: {part: weight, of: 500 g}
  plank: {part: board, length: 90 cm, prop at: 80 cm, first pin: 10 cm, pin spacing: 5 cm, pins: 6}
  dinghy: {part: cart, mass: 120 g, length: 14 cm, wheel diameter: 30 mm}
  jack: {part: screw, diameter: 8 mm, pitch: 1.25 mm, lever arm: 10 cm, head mass: 60 g}
`;

const ACTIVITY = `handspike: activity 1
title: Harbour <bench> & slip
tables:
  - table: "1"
    title: The boat hook
    machine: lever
    roles: {bar: bar, load: weight of 500 g, newtons: spring scale, grams: spring scale}
    setups:
      - {setup: L1, scale: newtons, fulcrum at: hole 6, load at: hole 3, pull at: hole 11, partner: L2}
      - {setup: L2, scale: newtons, fulcrum at: hole 6, load at: hole 5, pull at: hole 11, zeroed: in place, partner: L1}
      - {setup: L3, scale: grams, fulcrum at: hole 1, load at: hole 4, pull at: hole 11}
      - {setup: L4, scale: newtons, fulcrum at: hole 1, load at: hole 4, pull at: hole 11, read: held}
  - table: "2"
    title: The slipway
    machine: inclined plane
    roles: {board: board, rides on: cart, load: weight of 500 g, scale: spring scale}
    setups:
      - {setup: S1, propped at: hole 3}
  - table: "3"
    title: The jack
    machine: screw
    roles: {screw: screw}
    setups:
      - {setup: J1, watch: turns, travel: 10 mm, start gap: 0.5 mm, load: none, scale: none}
`;

const VISIT = `handspike: visit 1
kit: bench.kit.yaml
activity: bench.activity.yaml
date: 2026-05-12
roles:
  "1": {newtons: amber, grams: teal}
  "2": {scale: amber}
`;

/** Three tables at the boathouse, prepared from their files as a user's would be. */
export function boathouse(): Sheet {
  const prepared = prepare({
    kit: { name: 'bench.kit.yaml', text: KIT },
    activity: { name: 'bench.activity.yaml', text: ACTIVITY },
    visit: { name: 'bench.visit.yaml', text: VISIT },
  });
  const errors = prepared.diagnostics.filter(isError);
  if (errors.length > 0) throw new Error(JSON.stringify(errors, null, 2));
  return sheetOf(prepared);
}

/** The setup of a mark, wherever it stands. */
export function setupNamed(sheet: Sheet, mark: string) {
  for (const table of sheet.tables) for (const setup of table.setups) if (setup.mark === mark) return setup;
  throw new Error(`no setup ${mark}`);
}
