/** Fonts for a job: which are at hand, which can be cut in its stock, and those it is made with. */
package org.frisket.prepare.fonts;
