/**
 * What can hurt someone or fish. Shown with every function that leads to handling it; local rules and a vet
 * come first.
 */
export const CAUTIONS: Readonly<Record<string, string>> = {
  SODA_ASH:
    'Soda ash and its solutions are strongly alkaline and cause serious eye irritation: ' +
    'wear goggles and gloves, dissolve it in a bucket first, never pour it onto fish or ' +
    'eggs. Follow the product label and local rules.',
  LIME:
    'Hydrated lime and quicklime burn skin and can blind: goggles, gloves, dust mask. ' +
    'Stir lime into water, never pour water onto quicklime: it boils. Do not use either ' +
    'in water that holds fish. If it gets in an eye rinse for many minutes and see a ' +
    'doctor. Follow the product label and local rules.',
  CAUSTIC:
    'Caustic soda burns skin and eyes at once and heats water to spitting: goggles, ' +
    'long gloves, apron. Add it a little at a time to plenty of cold water, never water ' +
    'to it; keep it away from acids and aluminium. Never into water that holds fish. If ' +
    'it gets in an eye rinse for many minutes and see a doctor. Follow the product label ' +
    'and local rules.',
  ACID:
    'Strong acids burn. Always pour acid into water, never water into acid; goggles, ' +
    'gloves, fresh air; keep away from chlorine bleach. Follow the product label and ' +
    'local rules.',
  HORMONE:
    'Hormones for fish are veterinary medicines: ask a vet, follow local rules and the ' +
    'leaflet, keep them away from children, and do not handle them if pregnant.',
  FORMALIN:
    'Formalin is poisonous, a cause of cancer and a strong irritant: goggles, gloves, ' +
    'fresh air. It takes oxygen out of the water. Ask a vet and check that local rules ' +
    'allow it.',
  BLEACH:
    'Bleach and caustic soda burn eyes and skin, and bleach with any acid gives off ' +
    'poisonous chlorine gas: goggles, gloves, open air, never near acids. Add caustic ' +
    'soda to water, never water to caustic soda. Follow the product labels and local ' +
    'rules, and rinse the cysts fully before they go near fish.',
  BATH:
    'A bath that cures one batch can kill the next: try a few eggs or fry first, watch ' +
    'them, have clean water ready. Ask a vet and follow local rules; never copy a dose ' +
    'from another species.',
  AMMONIA:
    'Raising pH turns harmless ammonium into toxic ammonia. Measure total ammonia before ' +
    'raising the pH of water that holds fish, and then by no more than 0.3 pH a step.',
  INJECTION:
    'Needles: a clean one for each fish, never put back into its cap by hand, thrown into a hard box. Salt water ' +
    'for injection is boiled and cooled, 9 g of plain salt in a litre. A prick of your own: wash, and see a doctor.',
  RESIDUES:
    'Fish that had a hormone, an anaesthetic or any drug are not for sale or the kitchen until the waiting days of ' +
    'the label are over; where none are printed, ask your vet or the authority. Mark them.',
  BANNED:
    'Malachite green, furazolidone and the other nitrofurans, chloramphenicol: forbidden for food fish in many ' +
    'countries, residues are found years later, some cause cancer. No dose of any drug is given here: ask a vet.',
  ELECTRICITY:
    'Electricity and water kill. Pumps, heaters and blowers on a residual-current device, sockets away from ' +
    'splashes, a loop in every cable so that drips fall off; switch off before you reach into a vat, dry hands.',
  CHLORINE:
    'Chlorine: goggles, gloves, open air. Never with acid, vinegar, ammonia or formalin: it gives off poisonous ' +
    'gas. Fish die at thousandths of a mg/L: neutralise, rinse three times and test for 0 before fish come back.',
};
