/** A name for a kept project or body that nothing else has: 80 random bits. */
export function newId(): string {
  // crypto.randomUUID exists only where the page came over a secure connection; these bits come everywhere.
  const bytes = crypto.getRandomValues(new Uint8Array(10));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
