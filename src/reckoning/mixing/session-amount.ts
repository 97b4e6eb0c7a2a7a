/**
 * Mixed adhesive for a session, kg: joint area (m²) × spread (kg/m², for both faces together) × (1 + loss).
 * `loss` is what stays in the cup and is squeezed out, as a share of what is spread. From the definitions of the
 * quantities.
 * Domain: area and spread positive, loss not negative, else undefined.
 */
import { notNegative, positive } from "../domain.ts";

export function sessionAmount(area: number, spread: number, loss: number): number | undefined {
  return positive(area, spread) && notNegative(loss) ? area * spread * (1 + loss) : undefined;
}
