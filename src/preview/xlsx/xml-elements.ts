/** Elements of that name, whatever their namespace prefix: attributes and what stands inside. */
export function elements(xml: string, name: string): { attributes: string; inner: string }[] {
  const pattern = new RegExp(`<((?:\\w+:)?${name})(\\s[^>]*?)?(?:/>|>([\\s\\S]*?)</\\1>)`, 'g');
  return [...xml.matchAll(pattern)].map((match) => ({ attributes: match[2] ?? '', inner: match[3] ?? '' }));
}

/** Value of an attribute, '' where it is missing. */
export function attribute(attributes: string, name: string): string {
  const text = new RegExp(`\\s${name}="([^"]*)"`).exec(attributes)?.[1] ?? '';
  return text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replace(/&#x([0-9a-f]+);/gi, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/&amp;/g, '&');
}
