const LONGEST = 254;
const FORM =
  /^[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?\.[A-Za-z0-9-]{2,}$/;

/** An e-mail address in lower case without surrounding space; undefined when it cannot be one. */
export const parseEmail = (raw: string): string | undefined => {
  const email = raw.trim().toLowerCase();
  return email.length <= LONGEST && FORM.test(email) ? email : undefined;
};
