export function makeFolder(folder: string): void;
