/**
 * Volts at the far end of a fence that leaks evenly along its length: a steady planning estimate.
 *
 *   γ = √(r ÷ leak), Z₀ = √(r × leak), x = γ × length
 *   V = E × Zin ÷ (Rs + Zin) ÷ (cosh x + Z₀ ÷ Z_L × sinh x)
 *
 * with Zin the resistance into which the energizer looks. Multiplied out, this is
 *
 *   V = E ÷ [cosh x + (Rs ÷ Z₀) sinh x + (Rs cosh x + Z₀ sinh x) ÷ Z_L]
 *
 * and sinh x ÷ Z₀ = length ÷ leak × (sinh x ÷ x), Z₀ sinh x = r × length × (sinh x ÷ x), which also holds without
 * leak or without wire resistance. Everything is multiplied by e^−x, so that long lossy lines do not overflow.
 *
 * sourceVolts E and sourceOhms Rs describe the energizer; wireOhms r and leakOhms (Ω × length) are per unit of
 * the length used; touchOhms Z_L is a load at the far end. leakOhms and touchOhms undefined: none.
 * Leaves out capacitance, inductance and reflections of the pulse.
 * Source: textbook theory of the uniform line, from memory.
 */
export function fenceVoltage(
  sourceVolts: number,
  sourceOhms: number,
  length: number,
  wireOhms: number,
  leakOhms: number | undefined,
  touchOhms: number | undefined,
): number {
  const leakPerLength = leakOhms === undefined ? 0 : 1 / leakOhms;
  const x = length * Math.sqrt(wireOhms * leakPerLength);
  const coshPart = (1 + Math.exp(-2 * x)) / 2;
  const sinhPartOverX = x === 0 ? 1 : -Math.expm1(-2 * x) / (2 * x);
  const wirePart = wireOhms * length * sinhPartOverX;
  const leakPart = length * leakPerLength * sinhPartOverX;
  const touchPart = touchOhms === undefined ? 0 : (sourceOhms * coshPart + wirePart) / touchOhms;
  return (sourceVolts * Math.exp(-x)) / (coshPart + sourceOhms * leakPart + touchPart);
}
