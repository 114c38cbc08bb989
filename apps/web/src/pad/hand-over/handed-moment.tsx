import styles from "./hand-over.module.css";

/** Between the code and the lead: as a rule too short to read. */
export const HandedMoment = ({ by }: { readonly by: string }) => (
  <section className={styles.moment} aria-busy="true" data-testid="handed-moment">
    <h2>{by} hands over to you</h2>
    <p>One moment: this phone asks for the lead.</p>
  </section>
);
