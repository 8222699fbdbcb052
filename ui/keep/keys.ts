// Which keys undo, redo and print, and where they are left to the text being typed.

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>

/** The step a key press asks for. */
export function stepOf(event: Pressed): 'undo' | 'redo' | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null
  const key = event.key.toLowerCase()
  if (key === 'z') return event.shiftKey ? 'redo' : 'undo'
  return key === 'y' && !event.shiftKey ? 'redo' : null
}

/** Whether a key press asks for a print. */
export const isPrint = ({ key, ctrlKey, metaKey, shiftKey, altKey }: Pressed): boolean =>
  (ctrlKey || metaKey) && !shiftKey && !altKey && key.toLowerCase() === 'p'

/** Whether the key goes to a text box, through whatever shadow trees. */
export const isTyping = (event: Event): boolean =>
  event
    .composedPath()
    .some(
      (place) =>
        place instanceof HTMLTextAreaElement ||
        (place instanceof HTMLInputElement && !/^(button|checkbox|radio|range|file)$/.test(place.type)),
    )
