/** Trials beside the linear law, as the command says them. */
export const trials = {
  'trials.head':
    'Good ranges by the linear law (JCGM 100) and by trials (JCGM 101), seed {seed}. The linear law stands where both its ends are within one graduation of those by trials, or within half the last digit of u where that is more.',
  'trials.explain': 'Near a limit of the linear law, so tried at random as well (JCGM 101, seed {seed})',
  'trials.key-stays': 'the key and the review stay with the linear law: take their range with care here',
  'trials.linear': 'linear law  good {good}',
  'trials.linear.none': 'linear law  no range',
  'trials.trials': 'trials      good {good}; mean {mean}, u {u}; {trials} trials',
  'trials.rough': 'the ends did not stand still within a fifth of a graduation: take them with care',
  'trials.held': 'held anywhere in the band, 19 of 20 groups write {range}',
  'trials.fates': 'of the trials: {fates}',
  'trials.fate.reading': '{percent} % a reading',
  'trials.fate.on its stop': '{percent} % on the stop (the stop is what is written)',
  'trials.fate.off the scale': '{percent} % off the scale',
  'trials.fate.moves under the scale': '{percent} % moved by the weight of the scale',
  'trials.fate.scale on the other side': '{percent} % with the scale on the other side',
  'trials.fate.does not come back': '{percent} % that do not come back',
  'trials.fate.no balance': '{percent} % without a balance',
  'trials.near': 'near: {limits}',
  'trials.near.near the stop': 'the stop of the scale',
  'trials.near.near the end of the scale': 'the end of the scale',
  'trials.near.near the weight of the scale': "the scale's own weight",
  'trials.near.near no pull': 'no pull at all',
  'trials.near.coarse graduations': 'graduations that are coarser than all other doubt',
  'trials.near.no figure by the linear law': 'a limit where the linear law has no figure',
  'trials.because.far from every limit': 'used: the linear law, far from every limit',
  'trials.because.the linear law holds':
    'used: the linear law, its ends are off by {low} and {high} (allowed {tolerance})',
  'trials.because.the linear law does not hold':
    'used: trials, the ends of the linear law are off by {low} and {high} (allowed {tolerance})',
  'trials.because.only trials have a figure': 'used: trials, only they have a figure',
  'trials.because.hardly any trial has a figure': 'used: what the linear law says',
  'trials.because.nothing is read': 'nothing is read here',
  'trials.assumes':
    'Trials go on until the ends stand still within a fifth of a graduation, at least 50000 of them. Every unknown is drawn once a trial, normal or even as the files have it, each apart from the others unless they share it. Whoever finds the pointer on its stop writes the stop. Trials off the scale write nothing and are left out of the ranges.',
} as const;
