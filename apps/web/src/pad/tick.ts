/** A short tick in the hand, where the device has one. */
export const tick = (): void => {
  navigator.vibrate?.(10);
};
