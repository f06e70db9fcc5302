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
    const known = { groups: [...'ABCDEF'], tables: [...'1234567'], starts: seconds(33_300) };
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

  it('says which wishes clash, with their lines, and ends with code 1', () => {
    const name = visitWith('clash.visit.yaml', 'closed: "4"\nwishes:\n  - group: A\n    must do: "4"\n');
    const { code, out } = at(name);
    expect(code).toBe(1);
    expect(out).toContain('There is no such timetable.');
    expect(out).toMatch(/table 4 is closed \(clash\.visit\.yaml, line \d+\)/);
  });

  it('needs a day and a clock for a calendar, and says so', () => {
    const name = visitWith('clockless.visit.yaml', '', (text) => text.replace(/^starts: .*\n/m, ''));
    expect(at(name, '--ics')).toMatchObject({ code: 2 });
    expect(at(name, '--ics').err).toContain('a calendar needs a clock');
    expect(at(name).out).toMatch(/^Rotation of/);
  });

  it.each([
    ['--signal and --as-free are two ways to move on: name one', ['--signal', '--as-free']],
    ['--csv and --json: name one of them', ['--csv', '--json']],
    ['--close: there is no table "9"', ['--close', '9']],
    ['--late: there is no group "G"', ['--late', 'G:10']],
    ['--late is written as B:10, not "B"', ['--late', 'B']],
    ['--copies is written as 2:2, not "2:0"', ['--copies', '2:0']],
    ['--minutes is a whole number from 1 to 1000, not "soon"', ['--minutes', 'soon']],
    ['--group: there is no group "H"', ['--ics', '--group', 'H']],
  ])('says "%s"', (says, args) => {
    const { code, err } = at(VISIT, ...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });
});
