import { describe, expect, it } from 'vitest';
import type { Diagnostic, Facts } from '../../core/diagnostics/diagnostic.ts';
import { type DiagnosticSentence, type FindingLabels, renderDiagnostic } from './diagnostic-text.ts';

const sentence: DiagnosticSentence = {
  what: 'the pull is too much',
  here: 'reads up to {range}',
  why: 'because',
  help: '[write "{nearest}"|choose another]',
};
const labels: FindingLabels = { error: 'error', warning: 'warning', note: 'note', why: 'why', help: 'help' };
const fill = (template: string, facts: Facts) =>
  template.replace(/\{([^{}]+)\}/g, (_, name: string) => String(facts[name]));
const finding = (facts: Facts): Diagnostic => ({
  code: 'scale-range',
  severity: 'error',
  at: { file: 'a.yaml', path: [], on: 'value' },
  facts,
});
const line = { file: 'a.yaml', line: 41, column: 12, lineText: '    scale: amber', length: 5 };

describe('a finding as text', () => {
  it('has headline, place, line with caret, why and help', () => {
    expect(renderDiagnostic(finding({ range: '5 N' }), line, sentence, labels, fill)).toBe(
      [
        'error[scale-range]: the pull is too much',
        '  a.yaml:41:12',
        '41 |     scale: amber',
        '   |            ^^^^^ reads up to 5 N',
        '  = why: because',
        '  = help: choose another',
      ].join('\n'),
    );
  });

  it('takes the words of a choice whose facts are there', () => {
    expect(
      renderDiagnostic(finding({ range: '5 N', nearest: 'teal' }), line, sentence, labels, fill),
    ).toContain('= help: write "teal"');
  });

  it('keeps a tab of the line, so that the caret stands below what it means', () => {
    const tabbed = { ...line, column: 2, lineText: '\tscale', length: 5 };
    expect(renderDiagnostic(finding({ range: 'x' }), tabbed, sentence, labels, fill)).toContain(
      '41 | \tscale\n   | \t^^^^^',
    );
  });

  it('shows a stretch of an endless line, with the caret in it', () => {
    const endless = { ...line, column: 500, lineText: 'x'.repeat(499) + 'y'.repeat(499), length: 499 };
    const text = renderDiagnostic(finding({ range: 'z' }), endless, sentence, labels, fill);
    const [, , shown = '', caret = ''] = text.split('\n');
    expect(shown.length).toBeLessThan(110);
    expect(shown.indexOf('y')).toBe(caret.indexOf('^'));
  });

  it('does not let control characters of a file reach the terminal', () => {
    const coloured = { ...line, lineText: 'a: \u001b[31mred' };
    expect(renderDiagnostic(finding({ range: 'x' }), coloured, sentence, labels, fill)).not.toContain(
      '\u001b',
    );
  });

  it('does without the line where a finding has no place in a file', () => {
    expect(renderDiagnostic(finding({ range: '5 N' }), null, sentence, labels, fill)).toContain(
      '  a.yaml\n  reads up to 5 N',
    );
  });
});
