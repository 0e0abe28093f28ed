export type LifeStage = 'latency' | 'incubation' | 'first feed' | 'yolk gone';

/**
 * Temperatures that kill, as published. Kept apart from where a table ends: one is the fish, the other is the
 * table.
 */
export interface Tolerance {
  readonly species: string;
  readonly life: 'eggs' | 'larvae';
  /** Dead below and above, °C. */
  readonly lethal: readonly [number, number];
  readonly source: string;
  readonly says: string;
}

export const TOLERANCES: readonly Tolerance[] = [
  {
    species: 'Clarias gariepinus',
    life: 'eggs',
    lethal: [17.5, 35.1],
    source: 'PROKES15',
    says: 'Prokesova et al. 2015',
  },
  {
    species: 'Clarias gariepinus',
    life: 'larvae',
    lethal: [18.9, 33.2],
    source: 'PROKES15',
    says: 'Prokesova et al. 2015',
  },
  {
    species: 'Oreochromis niloticus',
    life: 'larvae',
    lethal: [21.8, 32.1],
    source: 'RANATEMP',
    says: 'Rana, half the fry lost',
  },
];

/** Brood fish waiting to be stripped have no published lethal limit here. */
const lifeOf = (stage: LifeStage): Tolerance['life'] | undefined =>
  stage === 'latency' ? undefined : stage === 'incubation' ? 'eggs' : 'larvae';

export const toleranceFor = (species: string, stage: LifeStage): Tolerance | undefined => {
  const life = lifeOf(stage);
  return TOLERANCES.find((t) => t.species === species && t.life === life);
};

export const kills = ({ lethal: [low, high] }: Tolerance, temperature: number): boolean =>
  temperature < low || temperature > high;
