export interface FeedConversion {
  readonly biological: number;
  readonly economic: number;
}

/**
 * Feed conversion: feed given per weight gained. Economic counts only what is alive at the end; biological
 * also what grew and died.
 *
 * economic = feed / (end − start); biological = feed / (end + dead − start). In: all in one unit. NaN without
 * a gain. Source: DEFINITION. Example: 12 kg feed, 5 → 15 kg, 1 kg dead: economic 1.2, biological 1.09.
 */
export const feedConversion = (feed: number, start: number, end: number, dead: number): FeedConversion => {
  const per = (gain: number): number => (gain > 0 ? feed / gain : NaN);
  return { economic: per(end - start), biological: per(end + dead - start) };
};

/**
 * Growth that a ration can give: ration % / feed conversion ratio, % per day. Source: AQUATEXT. Example: 5 %
 * at 1.25 → 4.
 */
export const growthFromRation = (ration: number, conversion: number): number => (ration * 100) / conversion;
