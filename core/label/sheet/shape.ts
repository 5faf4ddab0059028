/** A place for text, in mm around its own middle: how wide a line between two heights may be. */
export interface Shape {
  readonly top: number;
  readonly bottom: number;
  /** Where text is balanced around. */
  readonly middle: number;
  /** Middle of the shape from the middle of its label. */
  readonly x: number;
  room(from: number, to: number): number;
}

/** A circle of radius `radius`, or the slice of it between two heights; a line is as long as its shorter chord. */
export const roundShape = (radius: number, top = -radius, bottom = radius): Shape => ({
  top,
  bottom,
  middle: top === -radius && bottom === radius ? 0 : (Math.max(top, -radius * 0.86) + bottom) / 2,
  x: 0,
  room: (from, to) => {
    const far = Math.max(Math.abs(from), Math.abs(to));
    return far >= radius ? 0 : 2 * Math.sqrt(radius * radius - far * far);
  },
});

export const boxShape = (x: number, width: number, top: number, bottom: number): Shape => ({
  top,
  bottom,
  middle: (top + bottom) / 2,
  x,
  room: (from, to) => (from < top - 1e-9 || to > bottom + 1e-9 ? 0 : width),
});
