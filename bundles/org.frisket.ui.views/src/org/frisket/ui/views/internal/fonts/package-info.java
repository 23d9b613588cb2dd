/** The choice of a font by eye: a list of families, each set in itself. */
package org.frisket.ui.views.internal.fonts;
