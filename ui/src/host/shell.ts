import { invoke } from "@tauri-apps/api/core";
import { language, words } from "../words";
import { base64 } from "./base64";
import { unreachable, type Answer, type Host } from "./host";
import { phone } from "./phone";

/** What the shell tells the page before its first script. */
export type Shell = {
  readonly platform: "android" | "ios" | "linux" | "macos" | "windows";
  readonly pictures: string;
  /** What it asked before the page was read, by command and request; null where there was no answer. */
  readonly ahead: {
    readonly language: string | null;
    readonly answers: Readonly<Record<string, Promise<Answer | null>>>;
  };
};

const CHUNK_BYTES = 1024 * 1024;

async function call(command: string, request: unknown): Promise<Answer> {
  try {
    return await invoke<Answer>("call", { command, request, language });
  } catch {
    return unreachable(words.failure.unreachable);
  }
}

/** An answer that was asked for ahead counts so long, or a garden opened tomorrow would show what was due today. */
const LEAD_MS = 10_000;

/** Takes an answer that is there already, once; any other question ends that, for it may change what they would be. */
function callAfter(ahead: Shell["ahead"]): Host["call"] {
  const answers = new Map(ahead.language === language ? Object.entries(ahead.answers) : []);
  setTimeout(() => answers.clear(), LEAD_MS);
  return async (command, request) => {
    const key = `${command} ${JSON.stringify(request)}`;
    const answer = answers.get(key);
    if (answer) answers.delete(key);
    else answers.clear();
    return (await answer) ?? call(command, request);
  };
}

async function uploadInChunks(file: File, progress: (share: number) => void): Promise<Answer> {
  const upload = crypto.randomUUID();
  for (let from = 0; ; from += CHUNK_BYTES) {
    const to = Math.min(from + CHUNK_BYTES, file.size);
    const last = to === file.size;
    const part = await base64(file.slice(from, to));
    const answer = await call("photo.chunk", { upload, base64: part, last, name: file.name });
    if (last || "failure" in answer) return answer;
    progress(to / file.size);
  }
}

/** Asks where to and writes it there; the shell's refusal is a finished sentence. */
async function keptByMaker(command: string, what: Record<string, string>): Promise<Answer> {
  try {
    return { reply: await invoke<boolean>(command, { ...what, language }) };
  } catch (thrown) {
    return { failure: { code: "storage", field: null, message: typeof thrown === "string" ? thrown : words.file.lost } };
  }
}

/** The page inside the app's own window, where one command carries every call. */
export function shellHost(shell: Shell): Host {
  return {
    platform: shell.platform,
    call: callAfter(shell.ahead),

    async uploadPhoto(file, progress) {
      try {
        // Android's IPC is text only: a raw body never arrives there.
        if (shell.platform === "android") return await uploadInChunks(file, progress);
        const body = new Uint8Array(await file.arrayBuffer());
        return await invoke<Answer>("call", body, { headers: { name: encodeURIComponent(file.name), language } });
      } catch {
        return unreachable(words.failure.photoLost);
      }
    },

    saveFile({ file_name, base64 }) {
      return keptByMaker("save", { fileName: file_name, base64 });
    },

    handOver(name) {
      return keptByMaker("hand_over", { name });
    },

    onLink(open) {
      const take = async () => {
        const link = await invoke<string | null>("opened_link");
        if (link) open(link);
      };
      addEventListener("trugbook-link", () => void take());
      void take();
    },

    phone: shell.platform === "android" || shell.platform === "ios" ? phone : null,

    photoUrl(hash, size) {
      return `${shell.pictures}/${hash}/${size}`;
    },
  };
}
