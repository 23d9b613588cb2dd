/** The way: a slim strip of the stations of a job, each with its state in words and numbers. */
package org.frisket.ui.views.internal.way;
