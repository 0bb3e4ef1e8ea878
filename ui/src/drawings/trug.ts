/** The shallow basket that gives the book its name, 320 wide and 232 high: its handle behind the herbs, its weave before them. */
export const trug = {
  handle: "M52 156C52 10 268 10 268 156L258 158C258 24 62 24 62 158Z",
  basket: "M24 146Q160 186 296 146L268 204Q160 232 52 204Z",
  slats:
    "M38.500 163Q160 189 281.500 163M43 176Q160 202 277 176M47.500 189Q160 215 272.500 189M96 164L110 216M224 164L210 216M158 172L160 219M126 168L134 218M194 168L186 218",
  rim: "M20 142Q160 184 300 142L297 151Q160 193 23 151Z",
};

/** Where what was picked stands in it: its foot, how large, how far it leans. */
export const standing = [
  { herb: "rosemary", part: "leaf", x: 74, y: 178, size: 1.2, lean: -30 },
  { herb: "marjoram", part: "herb", x: 118, y: 186, size: 1.45, lean: -14 },
  { herb: "hyssop", part: "herb", x: 166, y: 190, size: 1.65, lean: 2 },
  { herb: "chamomile", part: "flower", x: 210, y: 184, size: 1.4, lean: 12 },
  { herb: "feverfew", part: "flower", x: 244, y: 176, size: 1.15, lean: 30 },
] as const;
