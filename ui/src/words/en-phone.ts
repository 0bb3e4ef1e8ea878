/** The English of what a phone alone can do. */
export const phone = {
  scan: {
    title: "Scan a label",
    aim: "Hold the square code of a label in front of the camera.",
    noCamera: "The camera cannot be used here. Allow it in the phone's settings, or write the code.",
    code: "Lot code",
    codeHint: "The word and the number on the label, such as tavo-472.",
    codeMissing: "Lot code: write the word and the number.",
    open: "Open it",
  },
  remind: {
    title: "Reminders",
    turnOn: "Remind me in the morning of what is due",
    how: "At eight o'clock, by this phone alone: nobody else learns of it. On the locked screen others can read it, unless the phone hides it there.",
    refused: "The phone does not let the book remind you. Allow its notifications in the phone's settings, then turn this on again.",
    onPhones: "Only a phone can remind you while the book is closed; a computer cannot be told ahead. What is due can be saved for your calendar instead.",
    due: "What is due",
    heading: "Due today",
    line: (what: string, title: string) => `${what}: ${title}`,
    more: (count: string) => `and ${count} more`,
  },
} as const;
