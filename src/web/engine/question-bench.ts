import { activityFields, setupHeadFields, tableFields } from '../../core/files/activity-fields.ts';
import { readActivityFile } from '../../core/files/activity-file.ts';
import { nodeAt } from '../../core/files/edit-text.ts';
import { placeFields } from '../../core/files/gravity-fields.ts';
import { decimalField, kitFields, partFields } from '../../core/files/kit-fields.ts';
import { readKitFile } from '../../core/files/kit-file.ts';
import { readVisitFile, visitFields } from '../../core/files/visit-file.ts';
import { COMPOUND, machineWords, partKindNamed, slotsOf } from '../../core/files/vocabulary.ts';
import type { Kit } from '../../core/kit/kit.ts';
import { vocabulary } from '../../core/words.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import type { Texts } from './prepare-wire.ts';
import type { KindOfPart, MachineOffered, PartQuestions, Question, Questions } from './question-wire.ts';
import { type AskedOf, questionsFor } from './questions-asked.ts';
import { type FilesRead, tableQuestions } from './table-questions.ts';

/** What the answers write themselves, so that nobody is asked twice. */
const WRITTEN_ELSEWHERE = ['kit', 'activity', 'table', 'machine', 'setup'];

/** The three files as they stand; `null` where one of them is not what it should be. */
export function filesRead(texts: Texts, language: 'en' | 'es'): FilesRead | null {
  const kit = readKitFile(texts.kit, vocabulary);
  const activity = readActivityFile(texts.activity, vocabulary);
  const visit = readVisitFile(texts.visit);
  if (kit.kit === null || activity.activity === null || visit.visit === null) return null;
  return {
    language,
    kit: kit.kit,
    activity: activity.activity,
    visit: visit.visit,
    roots: { kit: kit.source.root, activity: activity.source.root, visit: visit.source.root },
  };
}

/**
 * All that can be asked about a kit, its tables and its visit, from the descriptions which parts and
 * machines give of themselves: a new kind of part or a new machine brings its questions with it.
 */
export function questionsOf(texts: Texts, language: 'en' | 'es'): Questions | null {
  const read = filesRead(texts, language);
  if (read === null) return null;
  const asked: AskedOf = { language, roots: read.roots };
  const head = (file: 'kit' | 'activity' | 'visit', fields: Parameters<typeof questionsFor>[3]) =>
    questionsFor(asked, file, [], fields).filter(({ name }) => !WRITTEN_ELSEWHERE.includes(name));
  return {
    kit: head('kit', kitFields).map(inAllFiles),
    // A visit without a place is one of somewhere; only one that says a height has to say a latitude.
    place: questionsFor(asked, 'visit', ['place'], placeFields).map((question) => ({
      ...question,
      isNeeded: question.isNeeded && nodeAt(read.roots.visit, ['place']) !== null,
    })),
    activity: head('activity', activityFields).filter(({ name }) => !(name in decimalField)),
    visit: head('visit', visitFields).filter(({ name }) => !(name in decimalField)),
    kinds: kindsOfPart(language),
    parts: partQuestions(read, asked),
    machines: machinesOffered(language, read.kit),
    tables: read.activity.tables.map((table) =>
      tableQuestions(
        read,
        table,
        (path, of) =>
          questionsFor(
            asked,
            'activity',
            path,
            of === 'table'
              ? tableFields
              : {
                  ...machineWords(vocabulary, table.machine)?.fields,
                  ...vocabulary.setupFields,
                  ...setupHeadFields,
                },
          ).filter(({ name }) => !WRITTEN_ELSEWHERE.includes(name)),
        sentence(language, `machine.${table.machine}`),
      ),
    ),
    taken: [
      ...read.kit.parts.map(({ mark }) => mark),
      ...read.activity.tables.flatMap(({ mark, setups }) => [mark, ...setups.map((each) => each.mark)]),
    ],
  };
}

/** Which sign stands before the tenths is asked once, of all three files. */
const inAllFiles = (question: Question): Question =>
  question.name in decimalField
    ? { ...question, and: (['activity', 'visit'] as const).map((file) => ({ ...question, file, and: [] })) }
    : question;

/** Kinds that one machine needs stand in the order of the machines; what every setup uses comes first. */
function kindsOfPart(language: 'en' | 'es'): readonly KindOfPart[] {
  return vocabulary.partKinds.map(({ kind, meaning }) => ({
    kind,
    meaning: sentence(language, meaning),
    usedBy: vocabulary.machines
      .filter(({ slots }) => Object.values(slots).some(({ kinds }) => kinds.includes(kind)))
      .map(({ name }) => sentence(language, `machine.${name}`)),
  }));
}

/** Also of a part whose kind is not known yet, or whose answers can't be read: its questions mend it. */
function partQuestions({ roots }: FilesRead, asked: AskedOf): readonly PartQuestions[] {
  const parts = nodeAt(roots.kit, ['parts']);
  if (parts?.kind !== 'map') return [];
  return parts.entries.flatMap(({ key: mark }): readonly PartQuestions[] => {
    const name = nodeAt(roots.kit, ['parts', mark, 'part']);
    const kind = name?.kind === 'text' ? partKindNamed(vocabulary, name.text) : undefined;
    if (kind === undefined) return [];
    return [
      {
        mark,
        kind: kind.kind,
        meaning: sentence(asked.language, kind.meaning),
        questions: questionsFor(asked, 'kit', ['parts', mark], { ...kind.fields, ...partFields }),
      },
    ];
  });
}

function machinesOffered(language: 'en' | 'es', kit: Kit): readonly MachineOffered[] {
  const has = new Set(kit.parts.map(({ kind }) => kind));
  return vocabulary.machines
    .filter(({ name }) => name !== COMPOUND)
    .map((machine) => ({
      name: machine.name,
      title: sentence(language, `machine.${machine.name}`),
      does: sentence(language, `${machine.name}.does`),
      lacks: Object.values(slotsOf(vocabulary, machine))
        .filter(({ kinds, optional }) => optional !== true && !kinds.some((kind) => has.has(kind)))
        .map(({ kinds }) => kinds.map((kind) => wordsFor(language, kind)).join(' / ')),
    }));
}

const wordsFor = (language: 'en' | 'es', kind: string): string =>
  sentence(language, partKindNamed(vocabulary, kind)?.meaning ?? kind);
