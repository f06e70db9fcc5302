import { diagnosticsEn } from '../../../core/machines/list.ts';
import type { DiagnosticSentence } from '../../text/diagnostic-text.ts';
import { benchDiagnostics } from './bench-diagnostics.ts';
import { dayDiagnostics } from './day-diagnostics.ts';
import { fileDiagnostics } from './file-diagnostics.ts';
import { quantityDiagnostics } from './quantity-diagnostics.ts';
import { setupDiagnostics } from './setup-diagnostics.ts';
import { syntaxDiagnostics } from './syntax-diagnostics.ts';
import { visitDiagnostics } from './visit-diagnostics.ts';

/** Every message in English, by its code: the general ones here, a machine's own from its folder. */
export const diagnosticSentences: Readonly<Record<string, DiagnosticSentence>> = {
  ...syntaxDiagnostics,
  ...quantityDiagnostics,
  ...fileDiagnostics,
  ...visitDiagnostics,
  ...dayDiagnostics,
  ...benchDiagnostics,
  ...setupDiagnostics,
  ...diagnosticsEn,
};
