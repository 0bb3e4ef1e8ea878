/** The German of what a phone alone can do. */
export const phone = {
  scan: {
    title: "Etikett scannen",
    aim: "Halte den quadratischen Code eines Etiketts vor die Kamera.",
    noCamera: "Die Kamera lässt sich hier nicht nutzen. Erlaube sie in den Einstellungen des Telefons, oder schreib den Code.",
    code: "Chargencode",
    codeHint: "Das Wort und die Zahl auf dem Etikett, etwa tavo-472.",
    codeMissing: "Chargencode: schreib das Wort und die Zahl.",
    open: "Öffnen",
  },
  remind: {
    title: "Erinnerungen",
    turnOn: "Erinnere mich morgens an das, was fällig ist",
    how: "Um acht Uhr, allein durch dieses Telefon: sonst erfährt niemand davon. Auf dem gesperrten Bildschirm können andere es lesen, wenn das Telefon es dort nicht verbirgt.",
    refused: "Das Telefon lässt das Buch nicht erinnern. Erlaube seine Mitteilungen in den Einstellungen des Telefons und schalte dies wieder ein.",
    onPhones: "Nur ein Telefon kann erinnern, während das Buch geschlossen ist; einem Rechner lässt sich nichts im Voraus auftragen. Was fällig ist, lässt sich stattdessen für deinen Kalender speichern.",
    due: "Was fällig ist",
    heading: "Heute fällig",
    line: (what: string, title: string) => `${what}: ${title}`,
    more: (count: string) => `und ${count} weitere`,
  },
};
