export const dist: string;
export function ensureBuilt(): void;
