import type { Reply } from '../answer.ts';
import type { Pipkin } from '../handle.ts';
import type { Heard } from '../heard.ts';
import { type SavedFile, saveFiles } from '../render/files.ts';

export interface Delivered {
  readonly reply: Reply;
  readonly files: readonly SavedFile[];
}

/**
 * Asks, and writes the answer's files into `folder`. Where they cannot be written the answer stands, with a warning
 * `file-not-written` instead of the files.
 */
export const deliver = async (pipkin: Pipkin, heard: Heard, folder: string): Promise<Delivered> => {
  const reply = await pipkin.hear(heard);
  if ('error' in reply || !reply.answer.files?.length) return { reply, files: [] };
  try {
    return { reply, files: await saveFiles(folder, reply.answer.files) };
  } catch {
    const names = reply.answer.files.map(({ name }) => name).join(', ');
    const text = `${names} could not be written to ${folder}: no room, or no right to write there.`;
    const warnings = [...reply.answer.warnings, { code: 'file-not-written', text }];
    return {
      reply: { ...reply, answer: { ...reply.answer, warnings } },
      files: [],
    };
  }
};
