import type { Diagnostic } from '../../core/diagnostics/diagnostic.ts';
import type { Activity } from '../../core/files/activity.ts';
import { readActivityFile } from '../../core/files/activity-file.ts';
import type { Path } from '../../core/files/context.ts';
import { withValueInTree } from '../../core/files/edit-tree.ts';
import { withGrown } from '../../core/files/grow-text.ts';
import { readKitFile } from '../../core/files/kit-file.ts';
import { locate } from '../../core/files/locate.ts';
import type { SourceFile, SourceText } from '../../core/files/source-text.ts';
import { readVisitFile } from '../../core/files/visit-file.ts';
import type { YamlTree } from '../../core/files/yaml-tree.ts';
import { type Prepared, type PreparedTable, prepare, prepareOne } from '../../core/prepare.ts';
import { vocabulary } from '../../core/words.ts';
import { findingSaid, findingsText } from '../../documents/text/findings-text.ts';
import type {
  AskedNow,
  AskedWhole,
  Chosen,
  Edit,
  FindingView,
  SetupRest,
  TableNow,
  Texts,
  Whole,
} from './prepare-wire.ts';
import { FILE_KINDS, type TextKind } from './prepare-wire.ts';
import { fieldGroups } from './setup-field-views.ts';
import { setupDrawings, setupView, tableRows } from './setup-view.ts';

/** The files as they were read last: a text that stays is read once. */
export interface PrepareBench {
  /** The texts with the edit made; `null` where the file doesn't let it be made. */
  readonly edited: (texts: Texts, edit: Edit) => Texts | null;
  /** The table in hand with the setup in hand; `null` where the files don't give one. */
  readonly now: (asked: Pick<AskedNow, 'texts' | 'language' | 'chosen'>) => Now | null;
  readonly whole: (asked: Pick<AskedWhole, 'texts' | 'language'>) => Whole;
}

/** What is shown at once, and what can come a moment later; `null` where no setup is in hand. */
export interface Now {
  readonly view: TableNow;
  readonly rest: (() => SetupRest) | null;
}

export function prepareBench(): PrepareBench {
  const readers = {
    kit: lastOf((file, tree) => readKitFile(file, vocabulary, tree)),
    activity: lastOf((file, tree) => readActivityFile(file, vocabulary, tree)),
    visit: lastOf(readVisitFile),
  };
  const sources = (texts: Texts) => ({
    kit: readers.kit.of(texts.kit).source,
    activity: readers.activity.of(texts.activity).source,
    visit: readers.visit.of(texts.visit).source,
  });
  const editedOnce = (texts: Texts, { file, path, value }: Edit): Texts | null => {
    const tree = readers[file].treeOf(texts[file]);
    const fresh = withValueInTree(tree, path, value);
    if (fresh !== null) readers[file].follow(fresh);
    const text = fresh?.source.text ?? withGrown(tree.source, path, value);
    return text === null ? null : { ...texts, [file]: { ...texts[file], text } };
  };
  return {
    edited: (texts, { and = [], ...edit }) =>
      [edit, ...and].reduce<Texts | null>((before, each) => before && editedOnce(before, each), texts),
    now: ({ texts, language, chosen }) => {
      const { kit } = readers.kit.of(texts.kit);
      const { activity } = readers.activity.of(texts.activity);
      const { visit } = readers.visit.of(texts.visit);
      const mark = activity === null ? null : tableIn(activity, chosen);
      if (kit === null || activity === null || visit === null || mark === null) return null;
      const table = prepareOne(kit, activity, visit, mark, texts.bench ?? null);
      if (table === null) return null;
      const prepared = setupIn(table, chosen);
      const words = activity.tables.find((each) => each.mark === mark);
      const written = words?.setups.find((each) => each.mark === prepared?.setup.mark);
      if (prepared === null || words === undefined || written === undefined)
        return { view: { rows: tableRows(language, table), setup: null }, rest: null };
      return {
        view: { rows: tableRows(language, table), setup: setupView(language, table, prepared) },
        rest: () => {
          const { kit: inKit, activity: inActivity, visit: inVisit } = sources(texts);
          const roots = { kit: inKit.root, activity: inActivity.root, visit: inVisit.root };
          const { parts } = prepared;
          return {
            setup: prepared.setup.mark,
            drawings: setupDrawings(language, table, prepared),
            groups: fieldGroups({ language, kit, activity, roots, visit: visit.file, parts }, words, written),
          };
        },
      };
    },
    whole: ({ texts, language }) => {
      const prepared = prepare({ ...texts });
      return {
        tables: prepared.tables.map((table) => tableRows(language, table)),
        findings: findingViews(language, texts, prepared),
      };
    },
  };
}

const TEXT_KINDS: readonly TextKind[] = [...FILE_KINDS, 'bench'];

const tableIn = (activity: Activity, chosen: Chosen | null): string | null =>
  activity.tables.find(({ mark }) => mark === chosen?.table)?.mark ?? activity.tables[0]?.mark ?? null;

/** The one in hand; one that can't be built is shown by what is found, never by another in its place. */
const setupIn = ({ setups, notPrepared }: PreparedTable, chosen: Chosen | null) =>
  setups.find(({ setup }) => setup.mark === chosen?.setup) ??
  (chosen !== null && notPrepared.includes(chosen.setup) ? null : setups[0]) ??
  null;

function findingViews(language: 'en' | 'es', texts: Texts, prepared: Prepared): readonly FindingView[] {
  return prepared.diagnostics.flatMap((diagnostic): readonly FindingView[] => {
    const file = TEXT_KINDS.find((kind) => texts[kind]?.name === diagnostic.at.file);
    if (file === undefined) return [];
    const found = locate(prepared.sources, diagnostic.at);
    return [
      {
        file,
        name: diagnostic.at.file,
        line: found?.line ?? 1,
        column: found?.column ?? 1,
        severity: diagnostic.severity,
        code: diagnostic.code,
        text: findingsText(language, prepared.sources, [diagnostic])[0] ?? diagnostic.code,
        words: findingSaid(language, diagnostic),
        path: placeOfAnswer(diagnostic),
      },
    ];
  });
}

/** What is missing is put right where it will stand. */
const placeOfAnswer = ({ code, at, facts }: Diagnostic): Path =>
  code === 'missing-key' && typeof facts.key === 'string' ? [...at.path, facts.key] : at.path;

/** A reader that knows the last file it was given, and its tree. */
function lastOf<T extends { readonly source: SourceFile; readonly diagnostics: readonly Diagnostic[] }>(
  read: (file: SourceText, tree?: YamlTree) => T,
) {
  let last: { readonly file: SourceText; readonly found: T } | null = null;
  const of = (file: SourceText, tree?: YamlTree): T => {
    if (last === null || last.file.text !== file.text || last.file.name !== file.name)
      last = { file, found: read(file, tree) };
    return last.found;
  };
  return {
    of,
    treeOf: (file: SourceText): YamlTree => {
      const { source, diagnostics } = of(file);
      const root = source.root?.kind === 'map' ? source.root : null;
      return { source, root, diagnostics: diagnostics.filter(({ code }) => code.startsWith('syntax.')) };
    },
    follow: (tree: YamlTree): void => void of(tree.source, tree),
  };
}
