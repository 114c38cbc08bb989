// Runs in the page, before its own scripts. Notes each movement of the pointer and when the drawing next changed;
// the trace, which has the same clock, says when that was seen.
{
  const watched = '[data-testid="court"]';
  let moves = [];
  let isNoting = false;
  const noteMove = (event) => {
    if (!isNoting || !event.isTrusted) return;
    const parts = event.getCoalescedEvents();
    for (const part of parts.length > 0 ? parts : [event]) moves.push({ sentMs: part.timeStamp });
  };
  const noteChange = () => {
    const drawnMs = performance.now();
    for (const move of moves) move.drawnMs ??= drawnMs;
  };
  // Before the page's own listeners, so that a movement is noted before anything is drawn for it.
  addEventListener("pointermove", noteMove, true);
  window.dragProbe = {
    /** Forgets earlier movements; the mark is where the page's clock and the trace's meet. */
    start: () => {
      moves = [];
      isNoting = true;
      const observer = new MutationObserver(noteChange);
      observer.observe(document.querySelector(watched), { subtree: true, childList: true, attributes: true });
      performance.mark("courtloom-bench");
      window.dragProbe.stop = () => {
        observer.disconnect();
        isNoting = false;
        return moves;
      };
    },
  };
}
