// Runs in the page, before its own scripts. Notes when a score was first painted, counted from the beginning of the
// navigation: it is in the document, and the frame after that has been handed over.
{
  const isShown = () => document.querySelector('[data-testid="score-A"]') !== null;
  const afterPaint = (then) =>
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = then;
      channel.port2.postMessage(undefined);
    });
  window.shownMs = new Promise((resolve) => {
    const look = () => {
      if (!isShown()) return;
      observer.disconnect();
      afterPaint(() => resolve(performance.now()));
    };
    const observer = new MutationObserver(look);
    observer.observe(document, { subtree: true, childList: true });
    look();
  });
}
