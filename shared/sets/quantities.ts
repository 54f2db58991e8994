/**
 * How many pieces to make so that as many good ones as are wanted are left when a share is spoilt, rounded up.
 * Source: n / (1 − p), rounded up, as printers order; common practice.
 * @param share of what is made, 0 to below 1
 */
export const withSpoilage = (wanted: number, share: number): number =>
  // a quotient that is whole must not be lifted by a float's last digit
  Math.ceil(wanted / (1 - share) - 1e-9);
