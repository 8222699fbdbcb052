// The field of a path, however many shadow trees down: in a panel, its steps, its readings.

/** The element that stands for a path, or for the nearest group that holds it; null where there is none. */
export function findField(root: ParentNode, path: string): HTMLElement | null {
  let best: HTMLElement | null = null
  const visit = (place: ParentNode) => {
    for (const el of place.querySelectorAll<HTMLElement>('*')) {
      const own = el.dataset.path
      if (
        own !== undefined &&
        `${path}.`.startsWith(`${own}.`) &&
        own.length > (best?.dataset.path?.length ?? -1)
      )
        best = el
      if (el.shadowRoot) visit(el.shadowRoot)
    }
  }
  visit(root)
  return best
}

/** Opens every lid over an element, also in the trees around its own. */
export function openLids(element: Element): void {
  let at: Element | null = element
  while (at) {
    const lid: HTMLDetailsElement | null = at.closest('details')
    if (lid) lid.open = true
    const next: Element | null = lid?.parentElement ?? null
    const root: Node = at.getRootNode()
    at = next ?? (root instanceof ShadowRoot ? root.host : null)
  }
}
