/**
 * Options of functions in other languages, as books in these languages pick them: a function takes them like its own
 * words. English → the other.
 */
export const CHOICE_WORDS = {
  fr: {
    fry: 'alevins',
    fingerlings: 'juvéniles',
    'ready-made solution': 'solution prête à l’emploi',
    'own-species pituitary': 'hypophyse de la même espèce',
    'carp pituitary': 'hypophyse de carpe',
    'tilapia pituitary': 'hypophyse de tilapia',
    hCG: 'hCG',
    'LHRHa with domperidone': 'LHRHa avec dompéridone',
    'LHRHa with pimozide': 'LHRHa avec pimozide',
    'soda ash': 'carbonate de soude',
    'soda ash monohydrate': 'carbonate de soude monohydraté',
    'washing soda': 'cristaux de soude',
    'baking soda': 'bicarbonate de soude',
    'hydrated lime': 'chaux éteinte',
    quicklime: 'chaux vive',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Accents as typed, apostrophes of either kind, small letters. */
const plain = (text: string): string => text.toLowerCase().replaceAll('’', "'").normalize('NFC');
const ENGLISH = new Map(
  Object.values(CHOICE_WORDS).flatMap((words) =>
    Object.entries(words).map(([english, own]) => [plain(own), english] as const),
  ),
);
/** The English of an option; undefined where no language says it so. */
export const englishOption = (word: string): string | undefined => ENGLISH.get(plain(word));
