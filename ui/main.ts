// Entry of the page: the fonts (placeholder until the sheet stands).
import './fonts.css'
