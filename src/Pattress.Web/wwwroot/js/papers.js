// Hands a file that was made on this device to whoever holds it. No request is ever made from here.

export function save(fileName, type, bytes) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}
