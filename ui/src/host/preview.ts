import { words } from "../words";
import { unreachable, type Answer, type Host } from "./host";

/** The page in an ordinary browser, served by the preview server it came from. */
export function previewHost(): Host {
  return {
    platform: "preview",

    async call(name, request) {
      try {
        const response = await fetch(`/call/${name}`, {
          method: "POST",
          headers: { "content-type": "application/json" },
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

    photoUrl(hash, size) {
      return `/photo/${hash}/${size}`;
    },
  };
}
