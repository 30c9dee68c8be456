/** Paper, dark or dim red: a choice of this device, not of the boat book. */
import { useSyncExternalStore } from 'react';

export const themes = ['device', 'paper', 'dark', 'red'] as const;
export type Theme = (typeof themes)[number];

export const themeName: Readonly<Record<Theme, string>> = {
  device: 'as the device',
  paper: 'paper',
  dark: 'dark',
  red: 'red, for the cabin at night',
};

const listeners = new Set<() => void>();
const night = matchMedia('(prefers-color-scheme: dark)');

/** Shows the theme kept on this device, and follows the device where none is kept. */
export function startTheme(): void {
  show();
  night.addEventListener('change', show);
}

export function chooseTheme(theme: Theme): void {
  if (theme === 'device') localStorage.removeItem('fettle-theme');
  else localStorage.setItem('fettle-theme', theme);
  show();
  for (const listener of listeners) listener();
}

export function useTheme(): Theme {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => kept(),
  );
}

function kept(): Theme {
  const theme = localStorage.getItem('fettle-theme');
  return themes.find((name) => name === theme) ?? 'device';
}

function show(): void {
  const theme = kept();
  const shown = theme === 'device' ? (night.matches ? 'dark' : 'paper') : theme;
  document.documentElement.dataset.theme = shown;
  const paper = getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper);
}
