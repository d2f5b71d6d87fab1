/** Half a tenth of a millimetre: a balance this near the edge of its target is within it. m. */
export const touching = 5e-5;
