import { language, words } from "../words";
import { unreachable, type Answer, type Host } from "./host";

/** The page in an ordinary browser, served by the preview server it came from. */
export function previewHost(): Host {
  return {
    platform: "preview",

    async call(name, request) {
      try {
        const response = await fetch(`/call/${name}`, {
          method: "POST",
          headers: { "content-type": "application/json", "accept-language": language },
          body: JSON.stringify(request),
        });
        return (await response.json()) as Answer;
      } catch {
        return unreachable(words.failure.unreachable);
      }
    },

    // fetch tells nothing about how much of a body was sent; XMLHttpRequest does.
    uploadPhoto(file, progress) {
      return new Promise((resolve) => {
        const request = new XMLHttpRequest();
        request.open("POST", `/photo?name=${encodeURIComponent(file.name)}`);
        request.setRequestHeader("accept-language", language);
        request.upload.onprogress = (event) => {
          if (event.lengthComputable) progress(event.loaded / event.total);
        };
        request.onload = () => {
          try {
            resolve(JSON.parse(request.responseText) as Answer);
          } catch {
            resolve(unreachable(words.failure.photoLost));
          }
        };
        request.onerror = () => resolve(unreachable(words.failure.photoLost));
        request.send(file);
      });
    },

    // A browser asks where to by itself, or has its folder for what was saved.
    async saveFile({ file_name, media_type, base64 }) {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const url = URL.createObjectURL(new Blob([bytes], { type: media_type }));
      download(url, file_name);
      setTimeout(() => URL.revokeObjectURL(url), 60_000);
      return { reply: true };
    },

    async handOver(name) {
      download(`/made/${encodeURIComponent(name)}`, name);
      return { reply: true };
    },

    // A browser opens addresses, and no label's link.
    onLink() {},
    phone: null,

    photoUrl(hash, size) {
      return `/photo/${hash}/${size}`;
    },
  };
}

function download(url: string, name: string): void {
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
}
