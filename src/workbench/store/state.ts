import type { AskedKey, BlockToldKey } from '../../body';
import type { Check } from '../../check';
import type { Units } from '../../length';
import type { Draft, Habits, LastPrint, Measures, Project, Station } from '../../project';
import type { BroughtBlocks } from '../../trace';
import type { Phrase, Problem } from '../../words';
import type { History } from './history';
import type { Quantity } from './quantity';

/** What a field is: where its number lives in the project, and how it is typed. */
export interface Field {
  readonly path: string;
  readonly quantity: Quantity;
  /** May be left empty. */
  readonly optional?: boolean;
}

/** What was typed into a field: kept while the field is edited, and for as long as it can't be read. */
export interface Entry {
  readonly text: string;
  readonly problem: Phrase | undefined;
}

/** One sentence about something that happened as a whole, e.g. a file that could not be opened. */
export interface Notice {
  readonly tone: 'told' | 'refused';
  readonly text: string;
  /** What can be done about it, each by one press. */
  readonly remedies?: readonly Remedy[];
}

export interface Remedy {
  readonly name: string;
  readonly act: () => void;
}

/** What the workbench knows. */
export interface BenchState {
  /** What people are used to where this is: a new project begins so. */
  readonly habits: Habits;
  /** Whether there is a project, or an example that somebody wanted to see: until then the page asks how to begin. */
  readonly begun: boolean;
  readonly project: Project;
  /** Under which the project is kept on this computer. */
  readonly id: string;
  /** Of the present project, or of the last one that could be drawn. */
  readonly draft: Draft;
  /** The measures before the change that is going on, to say what it moved. */
  readonly before: Measures | undefined;
  /** Why the present project can't be drawn; empty where it can. */
  readonly problems: readonly Problem[];
  readonly entries: Readonly<Record<string, Entry>>;
  readonly history: History;
  /** Keystrokes in one field are one change; this names the one that is going on. */
  readonly running: string | undefined;
  readonly station: Station;
  /**
   * The field that is in hand: it has the focus, or had it last. What is shown for it stays until another is taken, so
   * that nothing moves away from under a press that takes the focus elsewhere.
   */
  readonly field: string | undefined;
  /** The step of the working that is lit on the drawing. */
  readonly step: string | undefined;
  readonly workingShown: boolean;
  /** Whether turnings are shown folded over, or laid flat. */
  readonly folded: boolean;
  readonly notice: Notice | undefined;
}

/** What can be done on it. */
export interface BenchActions {
  readonly type: (field: Field, text: string) => void;
  readonly stepField: (field: Field, count: number, from: number | undefined) => void;
  readonly enter: (path: string) => void;
  readonly leave: (path: string) => void;
  readonly choose: (path: string, value: unknown) => void;
  /** Like `choose`, but all that comes until the control is left is one change. */
  readonly slide: (path: string, value: unknown) => void;
  /** Asks for estimates where something was not measured: one change to undo. */
  readonly estimate: (keys: readonly AskedKey[]) => void;
  /** Takes a measurement that no tape took from the brought blocks, or gives that up. */
  readonly takeFromBlocks: (key: BlockToldKey, taken: boolean) => void;
  /** Applies the remedy of a check, or another change that was proposed: one change to undo. */
  readonly remedy: (proposed: Pick<Check, 'id' | 'fix'>) => void;
  readonly showUnits: (units: Units) => void;
  /** Notes what was printed of a project, if that is still on the bench: nothing to undo. */
  readonly notePrint: (id: string, lastPrint: LastPrint) => void;
  /** What was saved last never came to paper: what was printed before that counts, and can be noted again. */
  readonly takeBackPrint: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly goTo: (station: Station) => void;
  readonly light: (step: string | undefined) => void;
  readonly showWorking: (shown: boolean) => void;
  readonly fold: (folded: boolean) => void;
  readonly open: (text: string, fileName: string) => void;
  readonly startFresh: () => void;
  /** Blocks that somebody brought, into the open project or, `anew`, into one of their own. */
  readonly takeBlocks: (blocks: BroughtBlocks, told: Phrase, anew: boolean) => void;
  readonly tell: (notice: Notice | undefined) => void;
}

export type Bench = BenchState & BenchActions;
