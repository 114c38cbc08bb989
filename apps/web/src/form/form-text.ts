/** The text of a form's control; empty when it is not there. */
export const formText = (form: FormData, name: string): string => {
  const value = form.get(name);
  return typeof value === "string" ? value : "";
};
