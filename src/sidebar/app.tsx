export function App() {
  return <h1>What do you want to do?</h1>;
}
