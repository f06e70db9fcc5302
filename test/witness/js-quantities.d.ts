/** The little of the unit library that the tests ask; it comes without types. */
declare module 'js-quantities' {
  interface Quantity {
    readonly scalar: number;
    readonly baseScalar: number;
    to(unit: string): Quantity;
  }
  export default function Qty(text: string): Quantity;
}
