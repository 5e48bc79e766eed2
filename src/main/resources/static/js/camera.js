// A picture from a tablet is larger than anybody looks at: it is made smaller before it is sent.

const LONGEST_PX = 2000;
const SMALL_BYTES = 1_500_000;

export default function camera(field) {
  const input = field.querySelector("input[type=file]");
  input?.addEventListener("change", async () => {
    const [file] = input.files;
    if (!file || file.size < SMALL_BYTES || !window.createImageBitmap) {
      return;
    }
    try {
      const picture = await createImageBitmap(file);
      const share = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
      const canvas = document.createElement("canvas");
      canvas.width = Math.round(picture.width * share);
      canvas.height = Math.round(picture.height * share);
      canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
      const blob = await new Promise((made) => canvas.toBlob(made, "image/jpeg", 0.85));
      if (blob && blob.size < file.size) {
        const small = new DataTransfer();
        small.items.add(new File([blob], file.name.replace(/\.\w+$/, ".jpg"), { type: "image/jpeg" }));
        input.files = small.files;
      }
    } catch {
      // The picture goes as it is; the server judges its size.
    }
  });
}
