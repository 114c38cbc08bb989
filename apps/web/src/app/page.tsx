export default function Page() {
  return <main>Courtloom</main>;
}
