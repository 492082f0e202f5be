import { all, own, say, words } from '../../words';
import { sentence } from '../store/refusal';

/** What the keeper says. */
export const well = (): string => words`Your work is kept on this computer again.`;

export const open = (name: string): string => words`“${own(name)}” is open.`;

export const elsewhere = (name: string): string =>
  words`“${own(name)}” is open in another tab, which saves it. What you change here goes into a copy of its own.`;

export const takeCopy = (): string => words`take a copy now`;

export const regained = (name: string): string =>
  words`The other tab is closed: “${own(name)}” is saved from this tab again.`;

export const parted = (name: string, copy: string): string =>
  words`“${own(name)}” was changed in another tab, too: what you changed of it here is now “${own(copy)}”.`;

export const copied = (name: string): string =>
  words`What is on the table is now a project of its own: “${own(name)}”.`;

export const setAside = (what: readonly string[]): string =>
  sentence(
    words`${all(what.map((one) => say`${own(one)}`))} can’t be read. It is set aside as it is, and listed under Projects.`,
  );
