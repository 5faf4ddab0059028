/** The smallest picture there is. */
const dot = '<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"></svg>';

/**
 * Starts the drawing thread ahead of the first picture, so that nobody waits for its fonts. For front-ends that stay;
 * a fault shows itself at the first real picture.
 */
export const warmPictures = (): void => {
  void import('./picture.ts').then(({ pngOf }) => pngOf(dot)).catch(() => {});
};
