import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readDoneFile } from '../../src/core/files/done-file.ts';
import { seconds } from '../../src/core/quantities/brands.ts';
import { runCommand } from '../command-line.ts';
import { readByIcalJs, readByTsIcs } from '../published/calendar-readers.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

const boathouse = exampleIn(scratchFolder(), 'brackwater');
const at = (...args: readonly string[]) => runCommand(['rotation', ...args], { folder: boathouse });

/** The visit of the boathouse with more lines. */
function visitWith(name: string, lines: string, change = (text: string) => text): string {
  const text = change(readFileSync(join(boathouse, 'harbour-day.visit.yaml'), 'utf8'));
  writeFileSync(join(boathouse, name), `${text}${lines}`);
  return name;
}
const VISIT = 'harbour-day.visit.yaml';

interface Stay {
  readonly group: string;
  readonly table: string;
  readonly from: number;
  readonly to: number;
}
/** A visit that ran at the table that broke is broken off. */
const table4Aside = ({ table, to }: Stay): boolean => table !== '4' || to <= 1500;

describe('handspike rotation', () => {
  it('prints who is where when, in the language asked for', () => {
    const { code, out } = at(VISIT);
    expect(code).toBe(0);
    expect(out).toMatch(/^Rotation of Harbour day/);
    for (const group of 'ABCDEF') expect(out).toMatch(new RegExp(`^${group} +\\|`, 'm'));
    expect(at(VISIT, '--language', 'es').out).toMatch(/^Rotación de Día de puerto/);
  });

  it('writes a row a stay, each group at each table once, and reads them back as what has been done', () => {
    const { out } = at(VISIT, '--csv');
    const known = {
      groups: [...'ABCDEF'],
      tables: [...'1234567'],
      starts: seconds(33_300),
      copies: {},
      classes: [],
    };
    const { stays, refused } = readDoneFile({ name: 'plan.csv', text: out }, { ...known, decimal: 'point' });
    expect(refused).toEqual([]);
    expect(new Set(stays.map(({ group, table }) => `${group}${table}`)).size).toBe(42);
    expect(stays).toHaveLength(42);
    expect(stays.every(({ from, to }) => from >= 300 && to !== null && to <= 3000)).toBe(true);
  });

  it('writes a calendar that two other programs read alike, each stay as the JSON has it', () => {
    const { out } = at(VISIT, '--ics');
    const events = readByIcalJs(out);
    expect(readByTsIcs(out)).toEqual(events);
    const [first] = JSON.parse(at(VISIT, '--json').out).classes as readonly {
      readonly stays: readonly { readonly group: string; readonly table: string; readonly from: number }[];
    }[];
    expect(
      events.flatMap(({ summary, start }) => (/: table/.test(summary) ? [`${summary} ${start}`] : [])),
    ).toEqual(
      first?.stays.map(({ group, table, from }) => {
        const clock = new Date((33_300 + from) * 1000).toISOString().slice(11, 19);
        return `Group ${group}: table ${table} 2026-05-12T${clock}`;
      }),
    );
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  });

  it('writes the calendar of one group, one table or one adult alone', () => {
    const summaries = (...args: readonly string[]) =>
      readByIcalJs(at(VISIT, '--ics', ...args).out).map(({ summary }) => summary);
    const group = summaries('--group', 'B');
    expect(group.filter((each) => each.includes(': table')).length).toBe(7);
    expect(group.every((each) => !/Group [^B]/.test(each))).toBe(true);
    expect(summaries('--table', '4').length).toBe(6);
    expect(summaries('--adult', '1').some((each) => /Table [46]: Adult 1/.test(each))).toBe(true);
  });

  it('gives everything as JSON, times in seconds since the start', () => {
    const json = JSON.parse(at(VISIT, '--json').out);
    expect(json.handspike).toBe('rotation 1');
    expect(json.classes[0].begins).toBe(300);
    expect(json.classes[0].outcome).toBe('timetable');
  });

  it('plans anew in the middle of the period from what has been done, and nobody repeats a table', () => {
    const rows = (args: readonly string[]) =>
      (JSON.parse(at(VISIT, '--json', ...args).out).classes[0].stays as readonly Stay[]).map((stay) => stay);
    const before = rows([]);
    const done = before.filter(({ from, to }) => to <= 1500 || from < 1500);
    const text = ['group,table,from,to', 'Z,1,09:20,09:25']
      .concat(
        done.map(({ group, table, from, to }) => [group, table, from / 60, to <= 1500 ? to / 60 : ''].join()),
      )
      .join('\n');
    writeFileSync(join(boathouse, 'done.csv'), text);
    const args = ['--now', '25', '--done', 'done.csv', '--close', '4'];
    const { code, err, out } = at(VISIT, ...args);
    expect(code).toBe(1);
    expect(err).toContain('done.csv: put these lines right (2)');
    expect(err).toContain('line 2 is not used (Z, 1, 09:20, 09:25): no group has that label');
    expect(out).toContain('Planned anew at 9:40.');
    expect(out).toContain('All are done by the bell');
    const after = rows(args);
    expect(new Set(after.map(({ group, table }) => `${group}${table}`)).size).toBe(after.length);
    for (const { group, table } of done.filter((stay) => table4Aside(stay)))
      expect(after.filter((stay) => stay.group === group && stay.table === table)).toHaveLength(1);
    expect(after.filter(({ table, from }) => table === '4' && from >= 1500)).toEqual([]);
  });

  it('plans nothing from a file whose columns nobody names', () => {
    writeFileSync(join(boathouse, 'nameless.csv'), 'a,b\nA,1\n');
    const { code, err, out } = at(VISIT, '--now', '25', '--done', 'nameless.csv');
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('nameless.csv, line 1: no row names the columns group, table and from');
    expect(err).toContain('Write a first row as group,table,from,to');
  });

  it('says beside the plan of which groups nothing is known', () => {
    const lines = ['A,1,5,11', 'B,1,6,12', 'C,2,5,11', 'D,3,5,11', 'E,4,5,11', 'E,5,8,11'];
    writeFileSync(join(boathouse, 'half.csv'), ['group,table,from,to', ...lines].join('\n'));
    const { code, err, out } = at(VISIT, '--now', '12', '--done', 'half.csv');
    expect(code).toBe(1);
    expect(err).toContain('line 3 is not used (B, 1, 6, 12): another group is at that table');
    expect(err).toContain('line 7 is not used (E, 5, 8, 11): this group is at another table');
    expect(out.replace(/\s+/g, ' ')).toContain('as if they had done nothing: B and F.');
    const told = ['A,1,5,11', 'B,2,5,11', 'C,3,5,11', 'D,4,5,11', 'E,5,5,11', 'F,6,5,11'];
    writeFileSync(join(boathouse, 'told.csv'), ['group,table,from,to', ...told].join('\n'));
    const whole = at(VISIT, '--now', '12', '--done', 'told.csv');
    expect([whole.code, whole.out.includes('as if they had done nothing')]).toEqual([0, false]);
  });

  it('ends the talk earlier too where the bell moves in the middle of the period', () => {
    const { out } = at(VISIT, '--now', '9:40', '--minutes', '40');
    expect(out.replace(/\s+/g, ' ')).toContain('the bell rings at 9:45, the talk ends at 9:55');
  });

  it('says what to teach in one period and in two, with the route of each group', () => {
    expect(at(VISIT, '--periods', '60').out).toContain('Nothing is left out');
    const { out, code } = at(VISIT, '--periods', '40,40');
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}Group A: [1-7 ›]+ \| [1-7 ›]+$/m);
    expect(JSON.parse(at(VISIT, '--periods', '40', '--json').out).handspike).toBe('teaching 1');
  });

  it('says which wishes clash, with their lines, and ends with code 1', () => {
    const name = visitWith('clash.visit.yaml', 'closed: "4"\nwishes:\n  - group: A\n    must do: "4"\n');
    const { code, out } = at(name);
    expect(code).toBe(1);
    expect(out).toContain('There is no such timetable.');
    expect(out).toMatch(/table 4 is closed \(clash\.visit\.yaml, line \d+\)/);
  });

  it('refuses side by side as tables free up with the reason, and plans it on a signal', () => {
    const name = visitWith('beside.visit.yaml', 'together: A, B\n');
    const { code, out } = at(name, '--as-free');
    expect(code).toBe(1);
    expect(out).toMatch(/groups A and B are always side by side \(beside\.visit\.yaml, line \d+\)/);
    expect(out.replace(/\s+/g, ' ')).toContain('Write "move: on a signal" into the visit');
    expect(at(name, '--signal').out).not.toContain('move: on a signal');
  });

  it('needs a day and a clock for a calendar, and says so', () => {
    const name = visitWith('clockless.visit.yaml', '', (text) => text.replace(/^starts: .*\n/m, ''));
    expect(at(name, '--ics')).toMatchObject({ code: 2 });
    expect(at(name, '--ics').err).toContain('a calendar needs a clock');
    expect(at(name).out).toMatch(/^Rotation of/);
  });

  it('says that there is nothing to plan, and why, where all tables are closed or the talks take all the time', () => {
    const shut = at(VISIT, '--close', '1,2,3,4,5,6,7');
    expect(shut.code).toBe(1);
    expect(shut.out).toContain('There is nothing to do: every table is closed.');
    const [told] = JSON.parse(at(VISIT, '--close', '1,2,3,4,5,6,7', '--json').out).classes;
    expect(told).toMatchObject({ outcome: 'unknown', why: 'all-closed', stays: [] });
    const talks = at(VISIT, '--minutes', '10');
    expect(talks.code).toBe(1);
    expect(talks.out).toContain('There is no time between introduction and talk: they take 15 min');
    const rest = visitWith('rest.visit.yaml', 'breaks:\n  - { at: 9:20, lasts: 44 min }\n');
    expect(at(rest).code).toBe(1);
    expect(at(rest).out).not.toContain('clash');
    expect(at(rest).out).toContain('There is no time for any table: 1 min without the breaks');
  });

  it('names the what-if that clashes by its option, and never a line of the file for it', () => {
    const { code, out } = at(VISIT, '--adults', '0');
    expect(code).toBe(1);
    expect(out).toContain('(asked with --adults)');
  });

  it('tells how likely what is left is done by the bell, in the middle of the period too', () => {
    const chanceIn = (...args: readonly string[]): number =>
      JSON.parse(at(VISIT, '--json', ...args).out).classes[0].chance.byTheBell;
    expect(chanceIn('--now', '40')).toBeGreaterThan(0.9);
    expect(chanceIn('--now', '25', '--stop', '12')).toBeLessThan(chanceIn('--now', '25'));
    expect(at(VISIT, '--now', '25', '--close', '4').out).toMatch(/All are done by the bell/);
  });

  it('writes minutes of a CSV to the hundredth', () => {
    const numbers = at(VISIT, '--csv').out.match(/(?<=,)\d+\.\d+/g) ?? [];
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers.filter((each) => !/^\d+\.\d{1,2}$/.test(each))).toEqual([]);
  });

  it('takes how long tables take from earlier visits, whoever their groups were, and says what was set aside', () => {
    const rows = ['red', 'blue', 'green', 'black'].flatMap((group, n) => [
      `${group},1,${10 * n},${10 * n + 9}`,
      `${group},2,${40 + 10 * n},${40 + 10 * n + 5.5}`,
    ]);
    writeFileSync(join(boathouse, 'may.csv'), `group,table,from,to\n${rows.join('\n')}\nred,3,100,\n`);
    const tables = (...args: readonly string[]): Record<string, number> =>
      Object.fromEntries(
        JSON.parse(at(VISIT, '--json', ...args).out).classes[0].tables.map(
          ({ mark, takes }: { readonly mark: string; readonly takes: number }) => [mark, takes],
        ),
      );
    const [before, after] = [tables(), tables('--past', 'may.csv')];
    // Nine minutes were longer than planned: nearer to them, and not all the way after four stays.
    expect(after['1']).toBeGreaterThan((before['1'] ?? 0) + 30);
    expect(after['1']).toBeLessThan(540);
    expect(after['3']).toBe(before['3']);
    const { out } = at(VISIT, '--past', 'may.csv');
    expect(out).toContain('How long tables take follows earlier visits:');
    expect(out).toMatch(/Table 1: .*, from stays: 4/);
    writeFileSync(join(boathouse, 'june.csv'), 'group,table,from,to\nred,99,0,5\n');
    const bad = at(VISIT, '--past', 'may.csv,june.csv');
    expect(bad.code).toBe(1);
    expect(bad.err).toContain('line 2 is not used (red, 99, 0, 5)');
  });

  it.each([
    ['--signal and --as-free are two ways to move on: name one', ['--signal', '--as-free']],
    ['--csv and --json: name one of them', ['--csv', '--json']],
    ['--close: there is no table "9"', ['--close', '9']],
    ['--late: there is no group "G"', ['--late', 'G:10']],
    ['--late is written as B:10, not "B"', ['--late', 'B']],
    ['--copies is written as 2:2, not "2:0"', ['--copies', '2:0']],
    ['--minutes is a whole number from 1 to 1000, not "soon"', ['--minutes', 'soon']],
    ['--done goes with --now: when is that?', ['--done', 'done.csv']],
    ['--now is a time within the period', ['--now', '99']],
    ['--now is a time within the period', ['--now', '08:00']],
    ['--periods is the minutes of up to 3 periods', ['--periods', '40,0']],
    ['--periods says how long each period is', ['--periods', '40', '--minutes', '40']],
    ['--late B:999: the bell rings 50 min after the start; write fewer minutes', ['--late', 'B:999']],
    ['--late B:30: the bell rings 25 min from now', ['--now', '25', '--late', 'B:30']],
    ['--late names "B" twice: which one holds?', ['--late', 'B:5,B:10']],
    ['--copies: a whole number from 1 to 20 goes with a name, not "2:500"', ['--copies', '2:500']],
    ['--close is written as 4,5, not ","', ['--close', ',']],
    ['--past is written as may.csv,june.csv, not "a.csv,"', ['--past', 'a.csv,']],
    ['--group says whose calendar: it goes with --ics', ['--group', 'A']],
    ['--group: there is no group "H"', ['--ics', '--group', 'H']],
  ])('says "%s"', (says, args) => {
    const { code, err } = at(VISIT, ...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });
});
