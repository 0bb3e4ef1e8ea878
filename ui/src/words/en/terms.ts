/** Words of the trade, each explained where a beginner meets it. */
export const terms = {
  terms: {
    menstruum: { name: "menstruum", plain: "The liquid that draws matter out of the plant, such as spirit and water." },
    ratio: { name: "ratio", plain: "1 to 5 means: one gram of herb gets 5 millilitres of liquid poured on it." },
    marc: { name: "marc", plain: "What is left of the herb once the liquid has been strained or pressed off." },
    maceration: { name: "maceration", plain: "You leave a herb in liquid at room temperature for days or weeks." },
    tare: { name: "tare", plain: "The weight of the empty tray or basket, taken off what the scale shows." },
    ovenSample: { name: "oven sample", plain: "A small, weighed part of the herb, dried fully to learn how much water it held." },
    dryMatter: { name: "dry matter", plain: "What is left of the herb when all of its water is gone." },
    dryingRatio: { name: "drying ratio", plain: "How many parts of fresh herb make one part of dry herb." },
    lotCode: { name: "lot code", plain: "Herb picked, dried or bottled together has one code, so you can trace it." },
    driedEquivalent: { name: "dried-herb equivalent", plain: "How much dried herb one millilitre of the finished liquid stands for." },
    glycerin: { name: "glycerin", plain: "A thick, sweet, clear liquid, also called “glycerol”. It mixes with water. Use the food grade." },
    percentVol: { name: "% vol", plain: "Millilitres of pure alcohol in 100 millilitres of liquid." },
    waterActivity: { name: "water activity", plain: "How free the water is for germs, from 0 for none to 1 for pure water." },
    ph: { name: "pH", plain: "A number for how sour a liquid is. The lower it is, the more sour." },
    acidity: { name: "acidity", plain: "Grams of acid in 100 millilitres, printed as % on the label of a vinegar." },
    flashPoint: { name: "flash point", plain: "The lowest temperature at which its vapour can catch fire from a flame." },
  },
};
