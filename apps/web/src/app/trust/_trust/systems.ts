/** How one kind of device trusts an authority, and forgets it again. `{name}` stands for the authority's name. */
export interface System {
  readonly id: "apple-phone" | "android" | "windows" | "mac" | "linux";
  readonly title: string;
  readonly steps: readonly string[];
  readonly forget: string;
}

export const SYSTEMS: readonly System[] = [
  {
    id: "apple-phone",
    title: "iPhone and iPad",
    steps: [
      "Open this page in Safari, touch “Get the certificate” and allow it.",
      "Settings → General → VPN & Device Management → “{name}” → Install.",
      "Settings → General → About → Certificate Trust Settings: switch “{name}” on. Without this step it stays untrusted.",
      "Come back to this page.",
    ],
    forget: "Settings → General → VPN & Device Management → “{name}” → Remove Profile.",
  },
  {
    id: "android",
    title: "Android",
    steps: [
      "Touch “Get the certificate”. It is saved among the downloads.",
      "Settings: search for “CA certificate”. It is below Security, often under “Encryption & credentials” → “Install a certificate”.",
      "CA certificate → Install anyway → choose courtloom.crt. The device asks for its screen lock.",
      "Come back to this page. Firefox on Android does not look there: take the device's own browser.",
    ],
    forget: "Settings: search for “Trusted credentials” → User → “{name}” → Remove.",
  },
  {
    id: "windows",
    title: "Windows",
    steps: [
      "Get the certificate and open courtloom.crt → Install Certificate → Current User.",
      "“Place all certificates in the following store” → Browse → Trusted Root Certification Authorities → Next → Finish → Yes.",
      "Close every window of the browser and open this page again.",
    ],
    forget:
      "Start → “Manage user certificates” → Trusted Root Certification Authorities → Certificates → “{name}” → Delete.",
  },
  {
    id: "mac",
    title: "Mac",
    steps: [
      "Get the certificate and open courtloom.crt: Keychain Access puts it into the login keychain.",
      "Open “{name}” there → Trust → “When using this certificate”: Always Trust. Close it and give your password.",
      "Come back to this page.",
    ],
    forget: "Keychain Access → login → Certificates → “{name}” → Delete.",
  },
  {
    id: "linux",
    title: "Linux, and Firefox on any computer",
    steps: [
      "Get the certificate.",
      "Firefox: Settings → Privacy & Security → View Certificates → Authorities → Import. Tick “Trust this CA to identify websites”.",
      "Other browsers on Linux: Settings → Privacy and security → Security → Manage certificates → the authorities, or your own → Import.",
      "Come back to this page.",
    ],
    forget: "In the same list: “{name}” → Delete.",
  },
];
