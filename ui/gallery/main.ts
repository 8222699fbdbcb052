// Entry of the gallery: the page's own styles, then every picture.
import '../fonts.css'
import '../tokens.css'
import '../style/sheet.css'
import './gallery.css'
import './page.ts'

document.body.replaceChildren(document.createElement('gallery-page'))
