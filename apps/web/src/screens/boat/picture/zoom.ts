/** How near the picture is looked at, and which part of it is in the frame. */
export interface Zoom {
  /** 1: all of her */
  readonly by: number;
  /** what stands in the middle of the frame, in px of the drawing as it is whole */
  readonly x: number;
  readonly y: number;
}

export interface Frame {
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
}

const most = 8;

export const wholeOf = ({ width, top, bottom }: Frame): Zoom => ({ by: 1, x: width / 2, y: (top + bottom) / 2 });

/** Looked at nearer or from further off, a point of the frame staying where it is. */
export function zoomed(
  zoom: Zoom,
  frame: Frame,
  factor: number,
  at?: { readonly x: number; readonly y: number },
): Zoom {
  const by = Math.min(most, Math.max(1, zoom.by * factor));
  const held = at ?? { x: frame.width / 2, y: (frame.top + frame.bottom) / 2 };
  const on = onDrawing(zoom, frame, held);
  return kept(
    {
      by,
      x: on.x - (held.x - frame.width / 2) / by,
      y: on.y - (held.y - (frame.top + frame.bottom) / 2) / by,
    },
    frame,
  );
}

/** Moved by so much of the frame. [px] */
export function moved(zoom: Zoom, frame: Frame, dx: number, dy: number): Zoom {
  return kept({ by: zoom.by, x: zoom.x - dx / zoom.by, y: zoom.y - dy / zoom.by }, frame);
}

/** Where a point of the whole drawing stands in the frame. */
export function inFrame({ by, x, y }: Zoom, frame: Frame, point: { readonly x: number; readonly y: number }) {
  return { x: (point.x - x) * by + frame.width / 2, y: (point.y - y) * by + (frame.top + frame.bottom) / 2 };
}

/** The point of the whole drawing that stands at a place of the frame. */
export function onDrawing({ by, x, y }: Zoom, frame: Frame, point: { readonly x: number; readonly y: number }) {
  return { x: (point.x - frame.width / 2) / by + x, y: (point.y - (frame.top + frame.bottom) / 2) / by + y };
}

/** Nothing but the drawing is looked at. */
function kept({ by, x, y }: Zoom, { width, top, bottom }: Frame): Zoom {
  const half = { x: width / 2 / by, y: (bottom - top) / 2 / by };
  return {
    by,
    x: Math.min(width - half.x, Math.max(half.x, x)),
    y: Math.min(bottom - half.y, Math.max(top + half.y, y)),
  };
}
