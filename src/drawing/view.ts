/** A rectangle in millimetres, y downwards. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Room for lettering around a drawing, in screen pixels. */
export interface Pads {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How millimetres lie on the screen: the viewBox, and how many millimetres a pixel is. */
export interface View {
  readonly box: Box;
  readonly mmPerPx: number;
}

/**
 * Fits a drawing of `content` millimetres into `widthPx`, at most `mostHeightPx` high, with pads that stay the same in pixels: a narrow
 * page gets a smaller drawing, never smaller lettering.
 */
export function fitView(content: Box, widthPx: number, pads: Pads, mostHeightPx = Infinity): View {
  const innerWidth = Math.max(widthPx - pads.left - pads.right, 40);
  const innerHeight = Math.max(mostHeightPx - pads.top - pads.bottom, 40);
  const mmPerPx = Math.max(content.width / innerWidth, content.height / innerHeight, 1e-6);
  const spare = (innerWidth * mmPerPx - content.width) / 2;
  return {
    mmPerPx,
    box: {
      x: content.x - spare - pads.left * mmPerPx, y: content.y - pads.top * mmPerPx,
      width: (innerWidth + pads.left + pads.right) * mmPerPx, height: content.height + (pads.top + pads.bottom) * mmPerPx,
    },
  };
}
