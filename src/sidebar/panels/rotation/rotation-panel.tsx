export function RotationPanel() {
  return <p>Not built yet.</p>;
}
