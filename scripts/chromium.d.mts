export function chromiumPath(): string | null;
export function ensureChromium(): string;
