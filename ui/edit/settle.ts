// Lists, radios and boxes take their attribute only until a person has touched them; after that, this property.

/** Sets every control marked `data-now` in a root: the value of a list; "true" or "false" for a box or radio. */
export function settle(root: ParentNode): void {
  for (const control of root.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[data-now]')) {
    const now = control.dataset.now ?? ''
    if (control instanceof HTMLSelectElement) control.value = now
    else control.checked = now === 'true'
  }
}
