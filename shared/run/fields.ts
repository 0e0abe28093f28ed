import { PREPARATION_NAMES } from '../families/preparations';

/** Words a run is described with; forms offer them, lines compare with them. */
export const PRODUCTS = ['fry', 'fingerlings'] as const;
export type Product = (typeof PRODUCTS)[number];
/** Every preparation of the list. */
export const PREPARATIONS = PREPARATION_NAMES;
export const MATERIALS = ['soda ash', 'baking soda'] as const;
