import type { Fields } from '../../description/fields.ts';
import { carriageFields } from '../../parts/carriage.ts';
import { pullFields } from '../../parts/guided-pull.ts';
import type { Slot } from '../machine.ts';

export const slots: Readonly<Record<string, Slot>> = {
  'rides on': { kinds: ['block', 'cart', 'rollers'] },
  'guide pulley': { kinds: ['guide pulley'], optional: true },
};

export const fields: Fields = { ...pullFields, ...carriageFields };
