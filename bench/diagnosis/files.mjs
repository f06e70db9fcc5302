// The three files of a class as its teacher writes them, and its readings as a spreadsheet does.
import { round } from './instrument.mjs';

/** Kit, activity and visit: what the teacher knows, never what is true. */
export function filesOf(kit, tables, latitude, groups) {
  const parts = {};
  for (const mark of kit.marks)
    parts[mark] = { part: 'weight', of: `${mark.slice(1)} g ± ${round(Number(mark.slice(1)) * 0.002)} g` };
  for (const table of tables) {
    for (const [mark, part] of Object.entries(table.parts)) parts[`${mark} ${table.mark}`] = part;
    if (table.scale !== null) parts[`scale ${table.mark}`] = table.scale.said;
  }
  const activity = tables.map((table) => ({
    table: table.mark,
    machine: table.machine,
    roles: activityRoles(table),
    setups: table.setups.map((setup) => ({
      setup: setup.mark,
      ...table.fields(setup.state),
      ...(setup.way === 'count' ? {} : { zeroed: table.zeroed, read: setup.way }),
      ...(setup.partner === null ? {} : { partner: setup.partner }),
      ...(table.isCounted || setup.state.load === table.setups[0].state.load ? {} : { load: 'other load' }),
    })),
  }));
  const roles = Object.fromEntries(tables.map((table) => [table.mark, visitRoles(table)]));
  return {
    kit: {
      name: 'class.kit.yaml',
      text: yaml({ handspike: 'kit 1', serial: 'X-1', name: 'A drawn kit', parts }),
    },
    activity: {
      name: 'class.activity.yaml',
      text: yaml({ handspike: 'activity 1', title: 'A drawn day', age: 12, tables: activity }),
    },
    visit: {
      name: 'class.visit.yaml',
      text: yaml({
        handspike: 'visit 1',
        kit: 'class.kit.yaml',
        activity: 'class.activity.yaml',
        date: '2026-05-12',
        place: { latitude: `${latitude.toFixed(1)} deg`, height: '50 m' },
        groups,
        roles,
      }),
    },
  };
}

const otherLoad = (table) =>
  table.isCounted
    ? undefined
    : table.setups.map(({ state }) => state.load).find((load) => load !== table.setups[0].state.load);

const hasLoad = (table) => table.setups[0].state.load !== undefined;

function activityRoles(table) {
  const kinds = Object.fromEntries(
    Object.entries(table.roles).map(([role, part]) => [role, table.parts[part].part]),
  );
  if (table.isCounted) return kinds;
  return {
    ...kinds,
    ...(hasLoad(table) ? { load: 'weight' } : {}),
    ...(otherLoad(table) === undefined ? {} : { 'other load': 'weight' }),
    scale: 'spring scale',
  };
}

function visitRoles(table) {
  const marks = Object.fromEntries(
    Object.entries(table.roles).map(([role, part]) => [role, `${part} ${table.mark}`]),
  );
  if (table.isCounted) return marks;
  const other = otherLoad(table);
  return {
    ...marks,
    ...(hasLoad(table) ? { load: table.setups[0].state.load } : {}),
    ...(other === undefined ? {} : { 'other load': other }),
    scale: `scale ${table.mark}`,
  };
}

/** YAML in block style: text that could be taken for something else is quoted. */
function yaml(value, indent = '') {
  if (Array.isArray(value))
    return value.map((each) => `${indent}- ${yaml(each, `${indent}  `).trimStart()}`).join('');
  return Object.entries(value)
    .map(([key, each]) =>
      typeof each === 'object'
        ? `${indent}${quoted(key)}:\n${yaml(each, `${indent}  `)}`
        : `${indent}${quoted(key)}: ${typeof each === 'string' ? quoted(each) : each}\n`,
    )
    .join('');
}

const quoted = (text) => (/^[a-zA-Z][\w .±-]*$/.test(text) ? text : JSON.stringify(text));

/** The readings as a spreadsheet writes them. */
export const csvOf = (readings) =>
  [
    'group,setup,reading,note',
    ...readings.map(({ group, setup, text }) => `${group},${setup},"${text}",`),
  ].join('\n');
