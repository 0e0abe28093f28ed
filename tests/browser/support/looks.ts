/** The screens and looks every picture of the pane is taken in; still, so that no colour is caught in mid-change. */

export const WIDTHS = [
  [270, 640],
  [360, 640],
  [1024, 768],
] as const;
export const LOOKS = {
  light: { colorScheme: 'light', forcedColors: 'none', reducedMotion: 'reduce' },
  dark: { colorScheme: 'dark', forcedColors: 'none', reducedMotion: 'reduce' },
  forced: { colorScheme: 'light', forcedColors: 'active', reducedMotion: 'reduce' },
} as const;
