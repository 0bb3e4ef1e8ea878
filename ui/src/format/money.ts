import { locale } from "../words";

/** An amount of money as it is written where the reader lives: "€12.40", "12,40 €". */
export function money(amount: number, currency: string): string {
  return new Intl.NumberFormat(locale, { style: "currency", currency }).format(amount);
}
