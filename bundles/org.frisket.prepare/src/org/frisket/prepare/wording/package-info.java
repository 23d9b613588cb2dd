/** Places in a wording: carets, letters and bridges, and the path that its lines run along. */
package org.frisket.prepare.wording;
