/** The maker's book as it lies shut, 92 wide and 116 high: the pages at its side, the cover, the spine, the slip for a name. */
export const book = {
  pages: "M8 8H88V112H8Z",
  cover: "M4 4H82V108H4Z",
  spine: "M4 4H16V108H4Z",
  slip: "M28 84H70V98H28Z",
  written: "M34 91H60",
  /** Only its place, where there is none. */
  place: "M4 4H86V110H4Z",
};

/** A sheet of figures in its lines and columns, as large as the book. */
export const table = "M6 4H86V112H6ZM6 20H86M6 36H86M6 52H86M6 68H86M6 84H86M6 98H86M34 4V112M60 4V112";

/** The same sheet with its lines read, each with a tick. */
export const ticked = {
  sheet: "M6 4H86V112H6Z",
  lines: "M38 25H76M38 46H70M38 67H76M38 88H64",
  ticks: "M15 24L20 30L29 18M15 45L20 51L29 39M15 66L20 72L29 60M15 87L20 93L29 81",
};
