/** English of the wedge's diagnostics: headline, what stands after the caret, why, and what can be done. */
export const diagnostics = {
  'wedge.no-angle': {
    what: 'the wedge has no angle',
    here: 'neither its thickness nor its whole angle is written',
    why: 'how much a wedge gains follows from how steep it is',
    help: 'write "thickness: 3.2 cm", measured at the back',
  },
  'wedge.angle-twice': {
    what: 'the angle of the wedge is written twice',
    here: 'a whole angle of {angle}, and a thickness of {thickness} as well',
    why: 'two values for one measure leave open which one the key is for',
    help: 'keep the thickness and leave the angle out: a ruler is surer than a protractor',
  },
  'wedge.no-edge': {
    what: 'this wedge has no edge',
    here: 'a whole angle of {angle}',
    why: 'faces this far apart push nothing aside',
    help: 'write the angle between the faces at the thin end',
  },
  'wedge.past-its-back': {
    what: 'the wedge is pushed in past its own back',
    here: '{advance} in, but the wedge is only {length} long',
    why: 'behind the back there is nothing left that opens the gap',
    help: 'write how far the edge has gone from the first touch',
  },
  'wedge.lifting-goes-level': {
    what: 'a lifting wedge is pushed level',
    here: 'pushed down, this wedge would lift nothing',
    why: 'it slides along the table under its load',
    help: 'leave "pushed" out, or use a wedge with "kind of wedge: splitting"',
  },
  'wedge.lifting-has-no-cords': {
    what: 'a lifting wedge parts no cords',
    here: '"{part}" holds two faces together, and here is only a load',
    why: 'the push of a lifting wedge is worked out from the load alone',
    help: 'leave the cords out, or use a wedge with "kind of wedge: splitting"',
  },
  'wedge.how-far-in': {
    what: 'it is not said how far the wedge goes in',
    here: 'the cords "{part}" pull more the wider the gap',
    why: 'the reading depends on the place where it is taken',
    help: 'write "pushed in: 60 mm" and draw that mark on the wedge',
  },
  'wedge.near-jam': {
    what: 'the wedge is close to jamming',
    here: 'slope and friction angles come to {lean} together; above {most} small changes of friction show much',
    why: 'the push grows without bound as they come to a right angle',
    help: 'use a thinner wedge or waxed faces',
  },
  'wedge.cords-over-limit': {
    what: 'the cords are stretched past their limit',
    here: 'open by {opening}, and the limit of the cords is {most}',
    why: 'a cord past its limit can snap back',
    help: 'push the wedge in less far, or use longer cords',
  },
  'wedge.hands-do-better': {
    what: 'this wedge asks for more than it gives',
    here: 'a push of {push} for a side force of {side}',
    why: 'a dry wooden wedge that is pushed hardly beats the hands: it is the blow that does the work',
    help: 'say so in the discussion, wax the faces, or use a thinner wedge',
  },
} as const;
