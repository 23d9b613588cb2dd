/** The type case: the fonts at hand, a picture of every glyph, and the way from there to the bench. */
package org.frisket.ui.views.internal.typecase;
