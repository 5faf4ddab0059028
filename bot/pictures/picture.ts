import { DrawingThread } from './drawing-thread.ts';

let thread: DrawingThread | undefined;

/**
 * PNG of an SVG of ours, at one and a half pixels to the unit, drawn on a thread of its own with the shipped font. To be
 * imported when a picture is wanted, not before. Rejects with a `ThreadFault`; an answer can do without its picture.
 */
export const pngOf = (svg: string): Promise<Uint8Array> => {
  thread ??= new DrawingThread();
  return thread.draw(svg);
};

/** Ends the drawing thread; a later picture would start a new one. */
export const closePictures = async (): Promise<void> => {
  const closing = thread;
  thread = undefined;
  await closing?.close();
};
