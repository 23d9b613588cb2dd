/** What a face has and says of itself: names, style, axes, characters, and what its licence lets be done with it. */
package org.frisket.typography.face;
