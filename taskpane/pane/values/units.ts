import {
  gallonsFromLitres,
  kilogramsFromPounds,
  litresFromGallons,
  poundsFromKilograms,
} from '../../../shared/units/convert';
import type { PaneSettings } from '../keeping/settings';

/** Units as the person reads and types them; everything kept, calculated and written stays metric. */

interface ShownUnit {
  readonly unit: string;
  readonly toMetric: (value: number) => number;
  readonly fromMetric: (value: number) => number;
}
const IMPERIAL: Readonly<Record<string, ShownUnit>> = {
  '°C': { unit: '°F', toMetric: (f) => (f - 32) / 1.8, fromMetric: (c) => c * 1.8 + 32 },
  kg: { unit: 'lb', toMetric: kilogramsFromPounds, fromMetric: poundsFromKilograms },
  L: { unit: 'US gal', toMetric: litresFromGallons, fromMetric: gallonsFromLitres },
  'mL/kg': {
    unit: 'mL/lb',
    toMetric: (perPound) => perPound * poundsFromKilograms(1),
    fromMetric: (perKilogram) => perKilogram * kilogramsFromPounds(1),
  },
};
const same = (unit: string): ShownUnit => ({ unit, toMetric: (x) => x, fromMetric: (x) => x });

export const shownUnit = (unit: string, { units }: Pick<PaneSettings, 'units'>): ShownUnit =>
  (units === 'imperial' ? IMPERIAL[unit] : undefined) ?? same(unit);
