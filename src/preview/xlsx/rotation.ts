/** Turned texts: degrees against the clock in the file library, radians with the clock in the engine. */
const DEGREES_PER_RADIAN = 180 / Math.PI;

export function rotationOfDegrees(degrees: number): number {
  return -degrees / DEGREES_PER_RADIAN;
}

export function degreesOfRotation(rotation: number): number {
  return -Math.round(rotation * DEGREES_PER_RADIAN);
}
