const turnedPair = (text: string): string => {
  const bracketed = text.startsWith("[");
  const [score = "", rest] = text.replace("[", "").replace("]", "").split("(");
  const [own = "", other = ""] = score.split("-");
  const turned = `${other}-${own}${rest === undefined ? "" : `(${rest}`}`;
  return bracketed ? `[${turned}]` : turned;
};

/** A score as the other side says it: "6-4 3-2 30-15" is "4-6 2-3 15-30". SPEC PF11. */
export const turnedScore = (score: string): string =>
  score === "" ? "" : score.split(" ").map(turnedPair).join(" ");
