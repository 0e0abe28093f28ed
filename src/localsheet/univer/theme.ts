import { defaultTheme } from '@univerjs/themes';

/** The engine's accent set to our own deep water green; the page's CSS uses the same numbers. */
export const THEME = {
  ...defaultTheme,
  primary: {
    50: '#eef7f5',
    100: '#d7ebe7',
    200: '#b1d8d0',
    300: '#80bdb3',
    400: '#4f9f93',
    500: '#2f8377',
    600: '#1f6b61',
    700: '#19564f',
    800: '#14443f',
    900: '#0f3330',
  },
};
