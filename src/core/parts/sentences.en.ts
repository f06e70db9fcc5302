/** English sentences of lines, sheaves and hung loads, which several machines use. */
export const sentences = {
  'part.line': 'line',
  'line.field.thickness': 'thickness of the line',
  'part.guide-pulley': 'guide pulley',
  'sheave.field.sheave': 'what kind of sheave it is, where nobody measured it',
  'sheave.field.efficiency': 'what the sheave passes on of the pull',
  'sheave.field.drag-share': "drag of the sheave as a share of the mean of the line's two tensions",
  'sheave.field.constant-drag': 'drag of the sheave that stays however light the load is',
  'hung-load.step.read-rising': 'Read while the load rises, slow and steady.',
  'hung-load.step.creep': 'Let the load sink again, slow and steady.',
  'hung-load.step.read-sinking': 'Read while the load sinks.',
  'hung-load.step.hold': 'Hold the load still in the air.',
  'hung-load.step.read-rest': 'Read when the pointer rests.',
  'hung-load.step.harder': 'Pull harder and harder.',
  'hung-load.step.read-peak': 'Read the highest value just before it moves.',
} as const;

export const diagnostics = {
  'sheave.stated-twice': {
    what: 'the drag of a sheave is stated twice',
    here: '"{part}" has an efficiency as well',
    why: 'efficiency and drag share are two ways to write the same thing, and they need not agree',
    help: 'keep the one that was measured and delete the other',
  },
} as const;
