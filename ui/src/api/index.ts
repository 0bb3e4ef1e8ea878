import { base64, type Answer, type Host, type Phone, type TakenAway } from "../host";
import type { Commands, Noun, PhotoChunkTaken, PhotoTaken } from "./bindings";
import { words } from "../words";
import { Failure } from "./failure";

export { Failure } from "./failure";
export type * from "./bindings";

export type CommandName = keyof Commands;
export type Request<N extends CommandName> = Commands[N]["request"];
export type Reply<N extends CommandName> = Commands[N]["reply"];
/** What every write says: the deed that can be taken back, and which nouns it touched. */
export type Changed = { deed: string; changed: Noun[] };

/** The commands of the core with their types; a failure is thrown. */
export class Api {
  constructor(private readonly host: Host) {}

  async call<N extends CommandName>(name: N, request: Request<N>): Promise<Reply<N>> {
    return opened<Reply<N>>(await this.host.call(name, request));
  }

  async uploadPhoto(file: File, progress: (share: number) => void): Promise<PhotoTaken> {
    const reply = opened<PhotoTaken | PhotoChunkTaken>(await this.host.uploadPhoto(file, progress));
    const taken = "photo" in reply ? reply : reply.taken;
    if (!taken) throw new Failure("storage", null, words.failure.photoLost);
    return taken;
  }

  /** Whether the file is now where the maker wants it. */
  async saveFile(file: TakenAway): Promise<boolean> {
    return opened<boolean>(await this.host.saveFile(file));
  }

  /** Bytes as a request carries them. */
  base64(bytes: Blob): Promise<string> {
    return base64(bytes);
  }

  /** Whether the file that the core made is now where the maker wants it. */
  async handOver(name: string): Promise<boolean> {
    return opened<boolean>(await this.host.handOver(name));
  }

  onLink(open: (link: string) => void): void {
    this.host.onLink(open);
  }

  /** What a phone alone can do; null elsewhere. */
  get phone(): Phone | null {
    return this.host.phone;
  }

  photoUrl(hash: string, size: "thumb" | "original"): string {
    return this.host.photoUrl(hash, size);
  }
}

function opened<T>(answer: Answer): T {
  if ("failure" in answer) {
    const { code, field, message } = answer.failure;
    throw new Failure(code, field, message);
  }
  return answer.reply as T;
}
