/** A function of a locale that remembers: looking one up takes far longer than anything that is done with the answer. */
export function onceEach<Answer>(of: (locale: string) => Answer): (locale: string) => Answer {
  const known = new Map<string, Answer>();
  return (locale) => {
    if (!known.has(locale)) known.set(locale, of(locale));
    return known.get(locale) as Answer;
  };
}
