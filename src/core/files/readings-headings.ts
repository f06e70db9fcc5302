import { unitWritten } from '../readings/reading-units.ts';

export const COLUMN_NAMES = [
  'group',
  'setup',
  'reading',
  'note',
  'ease',
  'guess',
  'advantage',
  'workIn',
  'workOut',
  'unit',
] as const;
export type ColumnName = (typeof COLUMN_NAMES)[number];

/** Headings in English, Spanish, German and French, without accents and in small letters. */
const WORDS: Readonly<Record<ColumnName, string>> = {
  group: 'group|groups|group name|team|pupils|grupo|grupos|equipo|nombre del grupo|gruppe|gruppen|groupe',
  setup: 'setup|set-up|set up|card|station|montaje|tarjeta|estacion|aufbau|versuch|karte|montage|carte',
  reading:
    'reading|readings|scale reading|we read|value|lectura|lecturas|valor|valor leido|wert|messwert|messwerte|ablesung|lecture|mesure|valeur|releve',
  note: 'note|notes|remark|remarks|comment|comments|nota|notas|comentario|comentarios|observaciones|notiz|notizen|bemerkung|bemerkungen|remarque|remarques',
  ease: 'ease|how easy|how it felt|facilidad|como se sintio|leichtigkeit|wie leicht|facilite',
  guess:
    'guess|our guess|guess before|guess first|we guess|conjetura|nuestra conjetura|antes de leer|schatzung|vermutung|estimation|notre estimation',
  advantage:
    'advantage|mechanical advantage|ma|ventaja|ventaja mecanica|kraftvorteil|mechanischer vorteil|avantage|avantage mecanique',
  workIn:
    'work in|work put in|trabajo de entrada|trabajo puesto|arbeit hinein|zugefuhrte arbeit|travail fourni',
  unit: 'unit|units|unidad|unidades|einheit|unite',
  workOut: 'work out|work got out|trabajo de salida|trabajo util|arbeit heraus|nutzarbeit|travail utile',
};

const NAMED: ReadonlyMap<string, ColumnName> = new Map(
  COLUMN_NAMES.flatMap((column) => WORDS[column].split('|').map((word) => [word, column] as const)),
);

/** What stands at the head of a column: its words, and the unit for the cells below, if it names one. */
export interface Heading {
  readonly column: ColumnName | null;
  /** The heading without its unit. */
  readonly name: string;
  readonly unit: string;
}

/** A unit behind a heading: "reading (N)", "Messwert [g]", "lectura en N", "reading/N". */
const WITH_UNIT = /^(.*?)\s*(?:\(([^()]*)\)|\[([^[\]]*)\]|\/\s*(\S+)|\s(?:in|en)\s+(\S+))\s*:?$/i;

/**
 * @example headingOf('Lectura 2 (N)').column // => 'reading'
 * @example headingOf('Messwert [g]').unit // => 'g'
 */
export function headingOf(cell: string): Heading {
  const text = cell.trim();
  const [, bare = '', ...inner] = WITH_UNIT.exec(text) ?? [];
  const unit = inner.find((each) => each !== undefined) ?? '';
  const whole = columnNamed(text);
  if (whole !== null || bare === '') return { column: whole, name: text, unit: '' };
  return unitWritten(unit) === null
    ? { column: columnNamed(bare), name: text, unit: '' }
    : { column: columnNamed(bare), name: bare, unit };
}

/** "reading 2", "2. Messwert" and "1.ª lectura" are readings of one setup, one after the other. */
function columnNamed(text: string): ColumnName | null {
  const plain = text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[\s_]+/g, ' ')
    .replace(/ ?:$/, '')
    .trim();
  const found = NAMED.get(plain);
  if (found !== undefined) return found;
  const numbered = NAMED.get(
    plain.replace(/ ?(?:#|no\.?|n\.º)? ?\d{1,2}$|^\d{1,2}(?:st|nd|rd|th|\.?[ªa]|\.)? /, ''),
  );
  return numbered === 'reading' ? 'reading' : null;
}
