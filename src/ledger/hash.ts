/** SHA-256 (FIPS 180-4) through WebCrypto, which Node and workerd both have. */

/** The SHA-256 of the bytes as 64 lower-case hexadecimal digits. */
export async function sha256Hex(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', bytes)
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('')
}
