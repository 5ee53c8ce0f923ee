/**
 * Puts a text on the clipboard, as the person who pressed the button may; false where the host forbids it. The shell grants pages
 * no clipboard of their own, so the text is selected and copied.
 */
export function copyText(text: string): boolean {
  const before = document.activeElement;
  const box = document.createElement('textarea');
  box.value = text;
  box.className = 'heard';
  document.body.append(box);
  box.select();
  const copied = document.execCommand('copy');
  box.remove();
  if (before instanceof HTMLElement) before.focus();
  return copied;
}
