/** What somebody chose for the whole pane. */
export interface PaneSettings {
  /** Language of the words; 'auto' follows the spreadsheet program. */
  readonly language: 'auto' | 'en' | 'fr';
  /** How numbers and dates are written; 'auto' follows the words. */
  readonly numbers: 'auto' | 'point' | 'comma';
  /** Three letters or a sign, put behind money. */
  readonly currency: string;
  /** Grams a level spoon holds, as weighed. */
  readonly spoon: string;
  /** Units typed and read in the pane; the workbook keeps metric ones. */
  readonly units: 'metric' | 'imperial';
  /** Rings when a wait is over. */
  readonly rings: boolean;
}
export const usualSettings: PaneSettings = {
  language: 'auto',
  numbers: 'auto',
  currency: '',
  spoon: '',
  units: 'metric',
  rings: true,
};
