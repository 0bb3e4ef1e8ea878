import type { terms as english } from "../en/terms";
import type { Translated } from "../type";

export const terms: Translated<typeof english> = {
  terms: {
    menstruum: { name: "Auszugsmittel", plain: "Die Flüssigkeit, die Stoffe aus der Pflanze zieht, etwa Alkohol und Wasser. Im Fach heißt sie „Menstruum“." },
    ratio: { name: "Verhältnis", plain: "1 zu 5 heißt: Auf 1 Gramm Kraut gießt du 5 Milliliter Auszugsmittel." },
    marc: { name: "Pressrückstand", plain: "Was von der Pflanze übrig bleibt, wenn die Flüssigkeit abgeseiht oder abgepresst ist." },
    maceration: { name: "Mazeration", plain: "Die Pflanze zieht bei Zimmertemperatur über Tage oder Wochen in der Flüssigkeit." },
    tare: { name: "Tara", plain: "Das Gewicht der leeren Horde oder des leeren Korbs. Es wird von der Anzeige abgezogen." },
    ovenSample: { name: "Ofenprobe", plain: "Ein kleiner, gewogener Teil, ganz getrocknet. So zeigt sich, wie viel Wasser darin war." },
    dryMatter: { name: "Trockenmasse", plain: "Was von der Pflanze bleibt, wenn alles Wasser weg ist." },
    dryingRatio: { name: "Eintrocknungsverhältnis", plain: "Wie viele Teile frisches Kraut einen Teil getrocknetes ergeben." },
    lotCode: { name: "Chargencode", plain: "Was zusammen geerntet, getrocknet oder abgefüllt wurde, hat einen Code. So findest du es wieder." },
    driedEquivalent: { name: "Drogenäquivalent", plain: "Für wie viel getrocknetes Kraut ein Milliliter der fertigen Flüssigkeit steht. Getrocknetes Kraut heißt im Fach „Droge“." },
    glycerin: { name: "Glycerin", plain: "Eine dicke, süße, klare Flüssigkeit, auch „Glycerol“ genannt. Sie mischt sich mit Wasser. Nimm Lebensmittelqualität." },
    percentVol: { name: "% vol", plain: "Milliliter reiner Alkohol in 100 Millilitern Flüssigkeit." },
    waterActivity: { name: "Wasseraktivität", plain: "Wie frei das Wasser für Keime ist, von 0 für gar nicht bis 1 für reines Wasser." },
    ph: { name: "pH-Wert", plain: "Eine Zahl dafür, wie sauer eine Flüssigkeit ist. Je kleiner, desto saurer." },
    acidity: { name: "Säure", plain: "Gramm Säure in 100 Millilitern. Beim Essig steht sie als % auf dem Etikett." },
    flashPoint: { name: "Flammpunkt", plain: "Die niedrigste Temperatur, bei der sich der Dampf an einer Flamme entzünden kann." },
  },
};
