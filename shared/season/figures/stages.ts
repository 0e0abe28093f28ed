/** Which fish a vat can hold: eggs and yolk larvae, feeding larvae and fry, or fish being nursed. */
export const VAT_STAGES = ['eggs', 'fry', 'nursing'] as const;
export type VatStageKey = (typeof VAT_STAGES)[number];
