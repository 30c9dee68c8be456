import { chooseTheme, themeName, themes, useTheme } from './theme.ts';

/** One button that goes round: a thumb in a dark cabin needs no list. */
export function ThemeChoice() {
  const theme = useTheme();
  const next = themes[(themes.indexOf(theme) + 1) % themes.length]!;
  return (
    <button
      type="button"
      className="shell-icon"
      title={`Light: ${themeName[theme]}. Tap for ${themeName[next]}.`}
      aria-label={`Light: ${themeName[theme]}. Change to ${themeName[next]}.`}
      onClick={() => chooseTheme(next)}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <circle cx="12" cy="12" r="8.2" />
        <path d="M12 3.8a8.2 8.2 0 0 1 0 16.4z" fill="currentColor" />
      </svg>
      {theme === 'device' ? 'Light' : theme[0]!.toUpperCase() + theme.slice(1)}
    </button>
  );
}
