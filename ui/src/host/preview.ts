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
      const link = document.createElement("a");
      link.href = URL.createObjectURL(new Blob([bytes], { type: media_type }));
      link.download = file_name;
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
      return { reply: true };
    },

    madeUrl(name) {
      return `/made/${encodeURIComponent(name)}`;
    },

    photoUrl(hash, size) {
      return `/photo/${hash}/${size}`;
    },
  };
}
