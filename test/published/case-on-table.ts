import { readFileSync } from 'node:fs';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { type PreparationFiles, type PreparedSetup, prepare } from '../../src/core/prepare.ts';
import { setupsOf } from '../../src/core/review.ts';
import type { PublishedCase } from './topic.ts';

/**
 * A published case written as a user would write it: `on-tables/<id>.yaml` holds its kit, its activity
 * and, where roles have to be told apart, its visit, one under the other. `<name>` stands for an input
 * of the case as its source prints it, unit and all.
 */
export function caseOnTable(published: PublishedCase): {
  readonly setup: (mark: string) => PreparedSetup;
  /** Inputs of the case that the files never mention. */
  readonly unsaid: readonly string[];
  readonly errors: readonly string[];
} {
  const file = new URL(`./on-tables/${published.id}.yaml`, import.meta.url);
  const template = readFileSync(file, 'utf8');
  const prepared = prepare(filesOf(filledIn(template, published)));
  return {
    setup: (mark) => {
      const found = setupsOf(prepared).find((each) => each.setup.mark === mark);
      if (found === undefined) throw new Error(`${published.id} has no setup ${mark} that can be built`);
      return found;
    },
    unsaid: Object.keys(published.inputs).filter((name) => !template.includes(`<${name}>`)),
    errors: prepared.diagnostics.filter(isError).map(({ code, at }) => `${code} at ${at.path.join('/')}`),
  };
}

const filledIn = (template: string, published: PublishedCase): string =>
  template.replaceAll(/<(\w+)>/g, (whole, name: string) => {
    const input = published.inputs[name];
    if (input === undefined) throw new Error(`${published.id} has no input for ${whole}`);
    return input.unit === '1' ? String(input.value) : `${input.value} ${input.unit}`;
  });

function filesOf(text: string): PreparationFiles {
  const [kit = '', activity = '', visit] = text.split(/^---\n/m);
  return {
    kit: { name: 'kit.yaml', text: kit.replace(/^#.*\n/gm, '') },
    activity: { name: 'activity.yaml', text: activity },
    visit: visit === undefined ? null : { name: 'visit.yaml', text: visit },
  };
}
