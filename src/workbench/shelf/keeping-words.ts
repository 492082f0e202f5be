/** What the keeper says. */
export const WELL = 'Your work is kept on this computer again.';

export const open = (name: string): string => `“${name}” is open.`;

export const elsewhere = (name: string): string =>
  `“${name}” is open in another tab, and is kept from there. What you change here goes into a copy of its own.`;

export const regained = (name: string): string => `The other tab is closed: “${name}” is kept from here again.`;

export const parted = (name: string, own: string): string =>
  `“${name}” was changed in another tab, too: what you changed of it here is now “${own}”.`;

export const copied = (name: string): string => `What is on the table is now a project of its own: “${name}”.`;

export function setAside(what: readonly string[]): string {
  const text = `${what.join(', and ')} can’t be read. It is set aside as it is, and listed under Projects.`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
