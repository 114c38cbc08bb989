export function sameInstallation(lockText: string, installedText: string): boolean;
