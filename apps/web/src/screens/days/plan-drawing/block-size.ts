/** Sizes of the words in a block and of what stands around them. [px] */
export const nameSize = 14;
export const noteSize = 13;
export const nameLine = 17;
export const noteLine = 16;
/** top and bottom padding of a block together */
export const padding = 5;
/** a block narrower than this has less padding beside its words */
const narrow = 112;

/** What a block's edge and padding take of its width. */
export const insetsOf = (width: number) => (width < narrow ? 15 : 21);
