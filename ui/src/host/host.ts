import type { Phone } from "./phone";

/** What a call came to: the same two shapes for every command. */
export type Answer = { reply: unknown } | { failure: { code: string; field: string | null; message: string } };

/** A file on its way to wherever the maker keeps files. */
export type TakenAway = { file_name: string; media_type: string; base64: string };

/** Everything the page may ask of whatever it runs in. */
export interface Host {
  /** Which shell holds the page; told by the host, never guessed from the agent string. */
  readonly platform: "preview" | "android" | "ios" | "linux" | "macos" | "windows";
  call(name: string, request: unknown): Promise<Answer>;
  /** Hands a picked file to the core; `progress` hears the share sent, 0 to 1. */
  uploadPhoto(file: File, progress: (share: number) => void): Promise<Answer>;
  /** Lets the maker keep a file; true once it is where they want it. */
  saveFile(file: TakenAway): Promise<Answer>;
  /** Lets the maker keep a file that the core made, however long it is; true once it is where they want it. */
  handOver(name: string): Promise<Answer>;
  /** Hears of every label's link that opens the app, the one that started it included. */
  onLink(open: (link: string) => void): void;
  /** What a phone alone can do; null elsewhere. */
  readonly phone: Phone | null;
  photoUrl(hash: string, size: "thumb" | "original"): string;
}

/** The answer of a host that could not be reached at all. */
export function unreachable(message: string): Answer {
  return { failure: { code: "unreachable", field: null, message } };
}
