/** How a {@link org.frisket.typography.FontFace} is read from what its file holds. */
package org.frisket.typography.internal.face;
