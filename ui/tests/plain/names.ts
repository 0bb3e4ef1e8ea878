import type { Language } from "../../src/words/language";

/** Names that no plainer word replaces, beside the plants and substances that the core's own entries name. */
const kept: Record<Language, string> = {
  en: `
    Trugbook Android
    aciclovir alkaloid alkaloids antacids antibiotic antidepressant aspirin calcium ciclosporin ciprofloxacin citric
    cyanide digitalis digoxin echimidine glycerin glycerite glycerites iron interferon lithium magnesium menthol
    methanol isopropyl methylated denatured nicotine potassium salicylates saquinavir selenium tacrolimus tamoxifen
    tetrahydropalmatine thujone thyroid vitamin warfarin acetic cadmium coumarin
    abortion allergic allergy anaemia asthma autoimmune botulism cancer cirrhosis coeliac deficiency depression
    diabetes diarrhoea eczema endometriosis epilepsy fibroids gallstones infection jaundice leukaemia miscarriage
    paralysis reflux sclerosis tuberculosis tapeworm delirium
    urinary European Europe pharmacist pharmacists pharmacopoeia doctor Commission
    tincture tinctures menstruum marc maceration percolation oxymel decoction elixir cordial
  `,
  de: `
    Korbbuch
    Aciclovir Alkaloide Antidepressiva Aspirin Calcium Ciclosporin Digitalis Digoxin Echimidin Glycerin Glycerit
    Interferon Isopropanol Kalium Kaliummangel Lithium Magnesium Menthol Methanol Brennspiritus Salicylate Saquinavir
    Selen Tacrolimus Tamoxifen Thujon Vitamin Warfarin Phenprocoumon Zitronensäure Cadmium Cumarin Koffein
    Allergie Asthma Botulismus Depressionen Diabetes Durchfall Endometriose Epilepsie Krebs Leberzirrhose Leukämie
    Multiple Sklerose Reflux Tuberkulose Zöliakie Fuchsbandwurms
    Tinktur Tinkturen Menstruum Pressrückstand Mazeration Perkolation Oxymel Dekokt Elixier Likör
  `,
};

const files: Record<Language, Record<string, string>> = {
  en: import.meta.glob("../../../src-tauri/crates/words/texts/en/{herbs,poison,look_alikes,constituents}.ftl", { query: "?raw", import: "default", eager: true }),
  de: import.meta.glob("../../../src-tauri/crates/words/texts/de/{herbs,poison,look_alikes,constituents}.ftl", { query: "?raw", import: "default", eager: true }),
};

/** An entry that names a plant, a substance or what a plant holds, and says nothing of it. */
const NAME = /^(?:herb-(?![a-z0-9-]*-limit)|plant-|class-(?!strength)|look-alike-(?!no-mark|[a-z-]*-(?:why|tell)))[a-z0-9-]* = (.*)$/gm;

function gathered(language: Language): Set<string> {
  const lists = Object.values(files[language]).flatMap((file) => [...file.matchAll(NAME)].map((line) => line[1] ?? ""));
  const words = [kept[language], ...lists].join(" ").toLowerCase().match(/\p{L}{4,}/gu) ?? [];
  return new Set(words.flatMap((word) => [word, `${word}${language === "en" ? "s" : "n"}`]));
}

export const names: Record<Language, Set<string>> = { en: gathered("en"), de: gathered("de") };
