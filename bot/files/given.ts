import type { Result } from '../../core/result.ts';

/** Why a file cannot be read. */
export type FileTrouble = 'too-big' | 'not-there' | 'not-a-file' | 'unreadable';

/** A file that came with a message, or that its writer named. Nothing is read until it is asked for. */
export interface GivenFile {
  readonly name: string;
  /** How its writer named it: the path, or the file's name again. */
  readonly said: string;
  /** All of it, at most `mostBytes`. */
  read(mostBytes: number): Promise<Result<Uint8Array, FileTrouble>>;
}

/** How files come in. Each front-end has its own way; topics see this and nothing of paths or addresses. */
export interface Files {
  readonly attached: readonly GivenFile[];
  /** The file at a path: only where whoever asks sits at this machine. */
  at?(path: string): GivenFile;
}

export const noFiles: Files = { attached: [] };

/** Kinds of files that are looked at; others that are attached are passed over. */
const readable = /\.(?:json|csv|txt|json\.gz)$/i;
export const isReadable = (name: string): boolean => readable.test(name);
