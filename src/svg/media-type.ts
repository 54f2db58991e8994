/** Registered with IANA; see SVG 1.1, appendix P. */
export const svgMediaType = 'image/svg+xml';
