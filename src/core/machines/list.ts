import { diagnostics as partDiagnostics, sentences as partSentences } from '../parts/sentences.en.ts';
import { diagnostics as partDiagnosticsEs, sentences as partSentencesEs } from '../parts/sentences.es.ts';
import { diagnostics as compoundDiagnostics } from './compound/diagnostics.en.ts';
import { diagnostics as compoundDiagnosticsEs } from './compound/diagnostics.es.ts';
import { compound } from './compound/index.ts';
import { sentences as compoundSentences } from './compound/sentences.en.ts';
import { sentences as compoundSentencesEs } from './compound/sentences.es.ts';
import { diagnostics as dragDiagnostics } from './drag/diagnostics.en.ts';
import { diagnostics as dragDiagnosticsEs } from './drag/diagnostics.es.ts';
import { drag } from './drag/index.ts';
import { sentences as dragSentences } from './drag/sentences.en.ts';
import { sentences as dragSentencesEs } from './drag/sentences.es.ts';
import { diagnostics as inclineDiagnostics } from './incline/diagnostics.en.ts';
import { diagnostics as inclineDiagnosticsEs } from './incline/diagnostics.es.ts';
import { inclinedPlane } from './incline/index.ts';
import { sentences as inclineSentences } from './incline/sentences.en.ts';
import { sentences as inclineSentencesEs } from './incline/sentences.es.ts';
import { diagnostics as leverDiagnostics } from './lever/diagnostics.en.ts';
import { diagnostics as leverDiagnosticsEs } from './lever/diagnostics.es.ts';
import { lever } from './lever/index.ts';
import { sentences as leverSentences } from './lever/sentences.en.ts';
import { sentences as leverSentencesEs } from './lever/sentences.es.ts';
import type { Machine, Station } from './machine.ts';
import { diagnostics as screwDiagnostics } from './screw/diagnostics.en.ts';
import { diagnostics as screwDiagnosticsEs } from './screw/diagnostics.es.ts';
import { screw } from './screw/index.ts';
import { sentences as screwSentences } from './screw/sentences.en.ts';
import { sentences as screwSentencesEs } from './screw/sentences.es.ts';
import { diagnostics as tackleDiagnostics } from './tackle/diagnostics.en.ts';
import { diagnostics as tackleDiagnosticsEs } from './tackle/diagnostics.es.ts';
import { tackle } from './tackle/index.ts';
import { sentences as tackleSentences } from './tackle/sentences.en.ts';
import { sentences as tackleSentencesEs } from './tackle/sentences.es.ts';
import { diagnostics as wedgeDiagnostics } from './wedge/diagnostics.en.ts';
import { diagnostics as wedgeDiagnosticsEs } from './wedge/diagnostics.es.ts';
import { wedge } from './wedge/index.ts';
import { sentences as wedgeSentences } from './wedge/sentences.en.ts';
import { sentences as wedgeSentencesEs } from './wedge/sentences.es.ts';
import { diagnostics as windlassDiagnostics } from './windlass/diagnostics.en.ts';
import { diagnostics as windlassDiagnosticsEs } from './windlass/diagnostics.es.ts';
import { windlass } from './windlass/index.ts';
import { sentences as windlassSentences } from './windlass/sentences.en.ts';
import { sentences as windlassSentencesEs } from './windlass/sentences.es.ts';

/** A machine is only ever asked about stations that it made itself, so its own station type is safe. */
const asMachine = <S extends Station>(machine: Machine<S>): Machine => machine as unknown as Machine;

/** The machines that stand alone; each of them can be a stage of a compound. */
export const simpleMachines: readonly Machine[] = [
  asMachine(lever),
  asMachine(inclinedPlane),
  asMachine(drag),
  asMachine(tackle),
  asMachine(windlass),
  asMachine(screw),
  asMachine(wedge),
];

/** Every machine that a table can have: the one list to touch when a machine is added. */
export const machines: readonly Machine[] = [...simpleMachines, asMachine(compound(simpleMachines))];

/**
 * The machine that a file names.
 *
 * @example machineNamed('tackle')?.name // => 'tackle'
 */
export const machineNamed = (name: string): Machine | undefined =>
  machines.find((machine) => machine.name === name);

/** English sentences of all machines and of the parts that several of them use. */
export const sentencesEn: Readonly<Record<string, string>> = {
  ...partSentences,
  ...leverSentences,
  ...inclineSentences,
  ...dragSentences,
  ...tackleSentences,
  ...windlassSentences,
  ...screwSentences,
  ...wedgeSentences,
  ...compoundSentences,
};

/** What a diagnostic of a machine says: headline, words at the caret, why, and what can be done. */
export interface DiagnosticText {
  readonly what: string;
  readonly here: string;
  readonly why: string;
  readonly help: string;
}

export const diagnosticsEn: Readonly<Record<string, DiagnosticText>> = {
  ...partDiagnostics,
  ...leverDiagnostics,
  ...inclineDiagnostics,
  ...dragDiagnostics,
  ...tackleDiagnostics,
  ...windlassDiagnostics,
  ...screwDiagnostics,
  ...wedgeDiagnostics,
  ...compoundDiagnostics,
};

/** Spanish sentences of all machines and parts: the same keys. */
export const sentencesEs: Readonly<Record<string, string>> = {
  ...partSentencesEs,
  ...leverSentencesEs,
  ...inclineSentencesEs,
  ...dragSentencesEs,
  ...tackleSentencesEs,
  ...windlassSentencesEs,
  ...screwSentencesEs,
  ...wedgeSentencesEs,
  ...compoundSentencesEs,
};

export const diagnosticsEs: Readonly<Record<string, DiagnosticText>> = {
  ...partDiagnosticsEs,
  ...leverDiagnosticsEs,
  ...inclineDiagnosticsEs,
  ...dragDiagnosticsEs,
  ...tackleDiagnosticsEs,
  ...windlassDiagnosticsEs,
  ...screwDiagnosticsEs,
  ...wedgeDiagnosticsEs,
  ...compoundDiagnosticsEs,
};
