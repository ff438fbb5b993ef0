/** Runs in the page: opens each group of fields as it comes, as a person does who changes something in it. */
export function unfold(): void {
  const seen = new WeakSet<Element>();
  const open = (): void => {
    for (const group of document.querySelectorAll('details.rests')) {
      if (!seen.has(group)) group.setAttribute('open', '');
      seen.add(group);
    }
  };
  new MutationObserver(open).observe(document, { childList: true, subtree: true });
}
