/** The Makeready view: the findings of the job in front, one a line. */
package org.frisket.ui.views.internal.makeready;
