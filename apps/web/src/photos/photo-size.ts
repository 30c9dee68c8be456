/**
 * The most a photograph has once it is made smaller: what the book takes. It stands here too so that the page need not
 * load the book to know it. [bytes]
 */
export const mostKept_bytes = 400_000;
