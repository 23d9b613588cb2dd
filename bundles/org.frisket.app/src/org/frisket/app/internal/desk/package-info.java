/** The order desk beside the bench, and the way between the two. */
package org.frisket.app.internal.desk;
