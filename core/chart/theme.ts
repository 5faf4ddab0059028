export type ThemeName = 'light' | 'dark';

/** Colours as #rrggbb. Text colours reach 4.5:1 on the background, lines 3:1 (WCAG 2.2, 1.4.3 and 1.4.11). */
export interface Theme {
  readonly background: string;
  readonly text: string;
  readonly quiet: string;
  /** Gridlines carry nothing alone: they may be faint. */
  readonly grid: string;
  /** First and second curve. */
  readonly curves: readonly [string, string];
}

export const themes: Readonly<Record<ThemeName, Theme>> = {
  light: {
    background: '#faf7f0',
    text: '#26241f',
    quiet: '#5d5850',
    grid: '#e2dccf',
    curves: ['#8f4a06', '#0b5f78'],
  },
  dark: {
    background: '#1e2227',
    text: '#f0ece3',
    quiet: '#b8b2a5',
    grid: '#353b43',
    curves: ['#f2b04e', '#74cbe3'],
  },
};
