import { isError } from '../../core/diagnostics/diagnostic.ts';
import { titleIn } from '../../core/files/titles.ts';
import { type Prepared, type PreparedSetup, prepare } from '../../core/prepare.ts';
import { type Language, languageNamed } from '../../documents/sentences/language.ts';
import { findingsText } from '../../documents/text/findings-text.ts';
import type { GroupCard } from '../../store/wire.ts';
import type { OpenVisit } from './desk.ts';
import { groupCards } from './group-cards.ts';
import { type Planner, plannerFor } from './plan-now.ts';

export type PreparedSetups = ReadonlyMap<string, PreparedSetup>;

/** A visit with all that follows from its files alone. */
export interface VisitAtDesk {
  readonly opened: OpenVisit;
  readonly prepared: Prepared;
  /** In which the teacher and helpers read. */
  readonly language: Language;
  readonly title: string;
  readonly groups: readonly { readonly label: string; readonly language: Language }[];
  readonly planner: Planner | null;
  /** Cards by language and table. */
  readonly cards: ReadonlyMap<Language, Readonly<Record<string, GroupCard>>>;
  /** What is wrong with the files, a sentence each. */
  readonly trouble: readonly string[];
}

/** From the files to what is shown before anybody has written anything. */
export function visitAtDesk(opened: OpenVisit): VisitAtDesk {
  const prepared = prepare(opened.files);
  const { visit, activity } = prepared;
  const chosen = opened.language === null ? undefined : languageNamed(opened.language);
  const language = chosen ?? visit?.keyIn ?? 'en';
  const ofCards = chosen ?? visit?.cardsIn ?? 'en';
  const planner = prepared.tables.length === 0 ? null : plannerFor(prepared, opened.label);
  const planned = planner?.first.rotation.groups.map(({ label }) => label) ?? [];
  const listed = planned.length > 0 ? planned : (visit?.groupLabels ?? []);
  const labels = listed.length > 0 ? listed : ['A'];
  const groups = labels.map((label) => ({ label, language: visit?.groupLanguages[label] ?? ofCards }));
  const languages = [...new Set([language, ...groups.map((group) => group.language)])];
  return {
    opened,
    prepared,
    language,
    title: activity === null ? '' : titleIn(language, activity),
    groups,
    planner,
    cards: new Map(languages.map((each) => [each, groupCards(each, prepared)])),
    trouble: findingsText(language, prepared.sources, prepared.diagnostics.filter(isError)),
  };
}

/** The setups of a preparation by their marks. */
export const setupsByMark = (tables: Prepared['tables']): PreparedSetups =>
  new Map(tables.flatMap(({ setups }) => setups.map((at) => [at.setup.mark, at])));
