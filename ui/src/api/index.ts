import type { Answer, Host } from "../host";
import { Failure } from "./failure";
import type { Commands, PhotoReply } from "./wire";

export { Failure } from "./failure";
export type * from "./wire";

export type CommandName = keyof Commands;
export type Request<N extends CommandName> = Commands[N]["request"];
export type Reply<N extends CommandName> = Commands[N]["reply"];

/** The commands of the core with their types; a failure is thrown. */
export class Api {
  constructor(private readonly host: Host) {}

  async call<N extends CommandName>(name: N, request: Request<N>): Promise<Reply<N>> {
    return opened<Reply<N>>(await this.host.call(name, request));
  }

  async uploadPhoto(file: File, progress: (share: number) => void): Promise<PhotoReply> {
    return opened<PhotoReply>(await this.host.uploadPhoto(file, progress));
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
